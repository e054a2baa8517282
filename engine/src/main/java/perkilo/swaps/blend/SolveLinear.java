package perkilo.swaps.blend;

import java.util.Optional;

/** A solver of linear programs. */
@FunctionalInterface
public interface SolveLinear {

    /**
     * The levels that cost least.
     *
     * @return as many as the program has variables, each constraint kept within {@link LinearProgram#TOLERANCE}; empty
     *     if no levels keep all constraints
     */
    Optional<double[]> solve(LinearProgram program);
}
