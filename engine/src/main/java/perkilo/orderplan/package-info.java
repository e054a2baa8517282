/**
 * Orders: what to order, from whom and when, so that all demand can be made in its month.
 *
 * <p>The steps: each demand row is a {@link perkilo.orderplan.PlannedRun run} in its month → needs of each
 * {@link perkilo.orderplan.HorizonItem item} by month, and its stock → a {@link perkilo.orderplan.HorizonProblem
 * problem} for a planner → an {@link perkilo.orderplan.OrderPlan}: orders to suppliers with their dates, the stock
 * month by month, and what is left.
 *
 * <ul>
 *   <li>the {@link perkilo.orderplan.Horizon} begins with the month of the costing date and ends with the last month
 *       with demand; goods for a month must be there on its first day;
 *   <li>a lot may be used in every month that ends on or before its last day; of all usable lots, the one with the
 *       earliest last month is used first, and of equal ones stock and goods on order before purchases;
 *   <li>goods on order arrive for the first month that begins on or after the day on which they are expected, or for
 *       the first of all if they are overdue;
 *   <li>quantities are in kilograms of a material and pieces of a component, amounts in home currency, unless the name
 *       says otherwise;
 *   <li>the search for the cheapest plan comes from outside, as {@link perkilo.purchasing.PlanPurchases};
 *       {@link perkilo.orderplan.WhyThis} computes alternatives and their costs.
 * </ul>
 *
 * <p>Start at {@link perkilo.orderplan.OrderBook}. This package uses {@code costing}, the layers above it and the JDK.
 */
@NullMarked
package perkilo.orderplan;

import org.jspecify.annotations.NullMarked;
