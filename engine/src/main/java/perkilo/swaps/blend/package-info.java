/**
 * Joint swaps: all materials of one function in one phase, at the cheapest levels that keep the character of the blend.
 *
 * <p>A {@link perkilo.swaps.blend.LinearProgram} prices levels in a straight line; branch and bound over it decides
 * which materials are in, and proves that no other blend within the rules is cheaper at these prices. The best are then
 * costed with full purchase plans. Start at {@link perkilo.swaps.blend.BlendFinder}; the sentences are in
 * {@code BlendMessages} and {@code KeptMessages}. The solver of linear programs comes from outside, as
 * {@link perkilo.swaps.blend.SolveLinear}.
 */
@NullMarked
package perkilo.swaps.blend;

import org.jspecify.annotations.NullMarked;
