/**
 * General solvers of linear and mixed-integer programs, against which the engine's own searches are held.
 *
 * <p>{@link perkilo.oracle.LpText} writes a program, {@link perkilo.oracle.Solver} runs a solver on it. What is asked
 * stands beside what is tested: purchases in {@code perkilo.purchasing.search.oracle}, blends in
 * {@code perkilo.swaps.blend}.
 */
@NullMarked
package perkilo.oracle;

import org.jspecify.annotations.NullMarked;
