/**
 * A quick planner for many purchases that differ in one item or two, as a search for swaps makes them.
 *
 * <p>It answers with a proven plan where no minimum order value stands in the way, with a good plan and its bound
 * elsewhere, and hands over to the real planner what is beyond it. Start at {@link perkilo.swaps.plan.QuickPlanner}.
 * This package uses {@code purchasing} and the JDK.
 */
@NullMarked
package perkilo.swaps.plan;

import org.jspecify.annotations.NullMarked;
