/**
 * The search for the cheapest purchase, with its proof.
 *
 * <p>What couples the items of a purchase is that they share orders: an order's charges, and its minimum value. The
 * search puts a price on both ({@code Multipliers}); then each item can be planned on its own, exactly, by a dynamic
 * program ({@code ItemProgram}), and all items together give a bound that no plan can beat ({@code Relaxation}, raised
 * by {@code Ascent}, which climbs on guesses from known plans, {@code PlanPool}, between the exact evaluations). Good
 * plans come from the items' own choices, repaired and improved ({@code Incumbent}, {@code LocalSearch});
 * {@code BranchAndBound} closes what is left between plan and bound. Of plans that cost the same it takes any; what a
 * buyer would choose among them ({@code perkilo.purchasing.Preference}) is looked for afterwards, by
 * {@code Consolidation}.
 *
 * <ul>
 *   <li>decisions count steps, never time, so that the same problem gets the same plan everywhere;
 *   <li>the search works in {@code double}s; what it returns is costed again in decimals, and proven only if the bound
 *       is within half a minor unit of that.
 * </ul>
 *
 * <p>Start at {@link perkilo.purchasing.search.CheapestPlan}. This package uses {@code perkilo.purchasing} and the JDK.
 */
@NullMarked
package perkilo.purchasing.search;

import org.jspecify.annotations.NullMarked;
