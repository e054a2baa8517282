/**
 * Purchase problems of the size that buyers have, written as mixed-integer programs for general solvers.
 *
 * <p>{@link perkilo.ordering.oracle.SampleMarket} invents a problem, {@link perkilo.ordering.oracle.PurchaseModel}
 * states it without any knowledge of how the planner works, {@link perkilo.oracle.Solver} runs a solver on it.
 */
@NullMarked
package perkilo.ordering.oracle;

import org.jspecify.annotations.NullMarked;
