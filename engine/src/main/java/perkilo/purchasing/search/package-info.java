/**
 * The search for the cheapest purchase, with its proof.
 *
 * <p>The items of a purchase are coupled because they share orders: an order's charges, and its minimum value. The
 * search puts a price on both ({@code Multipliers}). Then each item can be planned on its own, exactly, by a dynamic
 * program ({@code ItemProgram}), and all items together make a bound that no plan can beat ({@code Relaxation}).
 * {@code Ascent} raises the bound; between exact evaluations it climbs on guesses from known plans ({@code PlanPool}).
 * Good plans come from the items' own choices, repaired and improved ({@code Incumbent}, {@code LocalSearch}).
 * {@code BranchAndBound} closes the gap between plan and bound. Among plans of the same cost it takes any;
 * {@code Consolidation} then looks for the one that a buyer would choose ({@code perkilo.purchasing.Preference}).
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
