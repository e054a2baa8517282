/**
 * The solver behind {@link perkilo.swaps.blend.SolveLinear}: the only package that names it.
 *
 * <p>Start at {@link perkilo.swaps.lp.OjalgoSolver}.
 */
@NullMarked
package perkilo.swaps.lp;

import org.jspecify.annotations.NullMarked;
