/**
 * A quick planner for purchases in one period from few vendors: all sets of vendors are tried. It serves the runs of a
 * costing, and the many purchases of a search for swaps that differ in one item or two.
 *
 * <p>If minimum order values do not interfere, the plan is proven (item by item if no vendor charges for an order).
 * Otherwise it is a good plan with its bound. Problems of another kind go to the full search. Results for a market are
 * remembered, up to a limit. Start at {@link perkilo.purchasing.search.quick.QuickPlanner}. This package uses
 * {@code purchasing} and the JDK.
 */
@NullMarked
package perkilo.purchasing.search.quick;

import org.jspecify.annotations.NullMarked;
