/**
 * A quick planner for purchases in one period from few vendors: all sets of vendors are tried. It serves the runs of a
 * costing, and the very many purchases of a search for swaps that differ in one item or two.
 *
 * <p>It answers with a proven plan where no minimum order value stands in the way (item by item where nobody charges
 * for an order), with a good plan and its bound elsewhere, and hands over to the full search what is beyond it. What it
 * works out of a market it remembers, within bounds. Start at {@link perkilo.purchasing.search.quick.QuickPlanner}.
 * This package uses {@code purchasing} and the JDK.
 */
@NullMarked
package perkilo.purchasing.search.quick;

import org.jspecify.annotations.NullMarked;
