/**
 * What to order, from whom and when, so that everything that is wanted can be made in its month.
 *
 * <p>The way of a plan: each demand row is a {@link perkilo.orderplan.PlannedRun run} in its month → needs of each
 * {@link perkilo.orderplan.HorizonItem item} by month, and what is on the shelf of it → a
 * {@link perkilo.orderplan.HorizonProblem problem} for a planner → an {@link perkilo.orderplan.OrderPlan}: orders to
 * suppliers with their dates, the stock month by month, and what is left.
 *
 * <ul>
 *   <li>the {@link perkilo.orderplan.Horizon} begins with the month of the costing date and ends with the last month
 *       that anything is wanted in; goods for a month have to be there on its first day;
 *   <li>a lot may be used in every month that ends on or before its last day; of all lots that may be used, the one
 *       whose last month comes first is used first, and of equal ones what is there, or on order, before what is
 *       bought;
 *   <li>goods on order are there for the first month that begins on or after the day they are expected, and for the
 *       first of all where they are overdue;
 *   <li>quantities are in kilograms of a material and pieces of a component, amounts in home currency, unless the name
 *       says otherwise;
 *   <li>who finds the cheapest plan is given from outside, as {@link perkilo.purchasing.PlanPurchases}; what else could
 *       have been done and what that would cost is answered by {@link perkilo.orderplan.WhyThis}.
 * </ul>
 *
 * <p>Start at {@link perkilo.orderplan.OrderBook}. This package uses {@code costing}, the layers above it and the JDK.
 */
@NullMarked
package perkilo.orderplan;

import org.jspecify.annotations.NullMarked;
