/**
 * Joint swaps: all materials of one function in one phase, at the levels that cost least and keep the blend's
 * character.
 *
 * <p>A {@link perkilo.swaps.blend.LinearProgram} prices levels in a straight line; branch and bound over it decides
 * which materials are in, and proves that no other blend within the bounds is cheaper at these prices. The best are
 * then costed with full purchase plans. Start at {@link perkilo.swaps.blend.BlendFinder}. Who solves linear programs is
 * given from outside, as {@link perkilo.swaps.blend.SolveLinear}.
 */
@NullMarked
package perkilo.swaps.blend;

import org.jspecify.annotations.NullMarked;
