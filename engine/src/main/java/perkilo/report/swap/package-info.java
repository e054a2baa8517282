/**
 * The sheets that {@code perkilo swap} writes: Swaps, Blend, Ingredient list, Emollients and Messages.
 *
 * <p>Results of a full purchase plan are fixed values, because the choice of what to buy differs with every swap;
 * everything that follows from other cells is a live formula. Start at {@link perkilo.report.swap.SwapReport}.
 */
@NullMarked
package perkilo.report.swap;

import org.jspecify.annotations.NullMarked;
