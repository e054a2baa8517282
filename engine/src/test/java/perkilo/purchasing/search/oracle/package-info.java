/**
 * Purchase problems of the size that buyers have, written as mixed-integer programs for general solvers.
 *
 * <p>{@link perkilo.purchasing.search.oracle.SampleMarket} invents a problem,
 * {@link perkilo.purchasing.search.oracle.PurchaseModel} states it without any knowledge of how the planner works,
 * {@link perkilo.oracle.Solver} runs a solver on it.
 */
@NullMarked
package perkilo.purchasing.search.oracle;

import org.jspecify.annotations.NullMarked;
