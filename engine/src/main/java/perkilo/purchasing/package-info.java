/**
 * The cost of a purchase, and the problem of what to buy.
 *
 * <p>A {@link perkilo.purchasing.PurchaseProblem} holds needs, vendors and quotes; a
 * {@link perkilo.purchasing.PurchasePlan} is one answer, whole packs of quotes in periods; a
 * {@link perkilo.purchasing.PlanCost} is its exact cost, line by line. {@link perkilo.purchasing.PlanPurchases} finds
 * the cheapest plan; the search itself is elsewhere, and its figures are never shown: a plan is always costed again
 * here, in decimals.
 *
 * <ul>
 *   <li>quantities are in the item's base unit: kilograms of a material, pieces of a component;
 *   <li>all costs are in home currency unless the name says otherwise;
 *   <li>a purchase line is rounded to its currency's minor unit, half up, and nothing else is rounded.
 * </ul>
 *
 * <p>Start at {@link perkilo.purchasing.PlanPurchases}. This package uses the JDK alone.
 */
@NullMarked
package perkilo.purchasing;

import org.jspecify.annotations.NullMarked;
