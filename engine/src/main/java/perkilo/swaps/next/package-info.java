/**
 * What a formulator asks for once swaps are found: a bench batch, what the trial costs and when it pays back, the same
 * swap in all formulas, and all emollients side by side.
 *
 * <p>Start at {@link perkilo.swaps.next.NextSteps}. This package uses {@code swaps} and its other packages, and
 * {@code costing}; the planner of purchases comes from outside.
 */
@NullMarked
package perkilo.swaps.next;

import org.jspecify.annotations.NullMarked;
