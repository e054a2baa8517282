package perkilo.swaps.lp;

import java.math.BigDecimal;
import java.util.Optional;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;
import perkilo.swaps.blend.LinearProgram;
import perkilo.swaps.blend.SolveLinear;

/**
 * Solves linear programs with ojAlgo.
 *
 * <p>Only its linear programming is used. An answer that does not keep every constraint is refused.
 */
public final class OjalgoSolver implements SolveLinear {

    @Override
    public Optional<double[]> solve(LinearProgram program) {
        ExpressionsBasedModel model = new ExpressionsBasedModel();
        for (int i = 0; i < program.size(); i++) {
            Variable variable = model.newVariable("x" + i).weight(program.cost(i));
            lower(variable, program.least(i));
            upper(variable, program.most(i));
        }
        int number = 0;
        for (LinearProgram.Row row : program.rows()) {
            addRow(model.newExpression("r" + number++), program.size(), row);
        }
        Optimisation.Result result = model.minimise();
        if (!result.getState().isFeasible()) {
            return Optional.empty();
        }
        double[] values = new double[program.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = result.doubleValue(i);
        }
        if (!program.isKeptBy(values)) {
            throw new IllegalStateException("the solver's answer breaks a constraint of " + program);
        }
        return Optional.of(values);
    }

    private static void addRow(Expression expression, int size, LinearProgram.Row row) {
        for (int i = 0; i < size; i++) {
            if (row.weight(i) != 0) {
                expression.set(i, row.weight(i));
            }
        }
        if (Double.isFinite(row.lower())) {
            expression.lower(BigDecimal.valueOf(row.lower()));
        }
        if (Double.isFinite(row.upper())) {
            expression.upper(BigDecimal.valueOf(row.upper()));
        }
    }

    private static void lower(Variable variable, double least) {
        if (Double.isFinite(least)) {
            variable.lower(BigDecimal.valueOf(least));
        }
    }

    private static void upper(Variable variable, double most) {
        if (Double.isFinite(most)) {
            variable.upper(BigDecimal.valueOf(most));
        }
    }
}
