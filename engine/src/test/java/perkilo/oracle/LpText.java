package perkilo.oracle;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashSet;
import java.util.Set;

/** A linear program being written: least cost, rows, and which variables are whole numbers. */
public final class LpText {

    /** What a difference of equal numbers leaves: a solver that scales such a factor up gives false answers. */
    private static final double ROUNDING = 1e-12;

    private final StringBuilder cost = new StringBuilder();
    private final StringBuilder rows = new StringBuilder();
    private final Set<String> integers = new LinkedHashSet<>();
    private final Set<String> binaries = new LinkedHashSet<>();
    private int count;

    /** A variable's part of the cost. */
    public void cost(String variable, double perUnit) {
        cost.append(term(perUnit, variable)).append('\n');
    }

    /** Makes a variable a whole number. */
    public void integer(String variable) {
        integers.add(variable);
    }

    /** Makes a variable 0 or 1. */
    public void binary(String variable) {
        binaries.add(variable);
    }

    /** Whether a variable was made 0 or 1. */
    public boolean knows(String binary) {
        return binaries.contains(binary);
    }

    /** A row to be filled. */
    public Row row() {
        return new Row();
    }

    private static String term(double factor, String variable) {
        return (factor < 0 ? " - " : " + ") + number(Math.abs(factor)) + " " + variable;
    }

    private static String number(double value) {
        return new BigDecimal(value)
                .round(new MathContext(15))
                .stripTrailingZeros()
                .toPlainString();
    }

    /** The program as solvers read it. */
    public String text() {
        return "Minimize\n obj:\n" + cost + "Subject To\n" + rows + section("Generals", integers)
                + section("Binaries", binaries) + "End\n";
    }

    private static String section(String name, Set<String> variables) {
        return variables.isEmpty() ? "" : name + "\n " + String.join("\n ", variables) + "\n";
    }

    /** A sum of terms, to be bounded. One term a line: solvers limit how long a line may be. */
    public final class Row {
        private final StringBuilder terms = new StringBuilder();

        /** Adds a term. */
        public Row plus(double factor, String variable) {
            if (Math.abs(factor) > ROUNDING) {
                terms.append(term(factor, variable)).append('\n');
            }
            return this;
        }

        /** The sum is no less. */
        public void atLeast(double bound) {
            end(">=", bound);
        }

        /** The sum is no more. */
        public void atMost(double bound) {
            end("<=", bound);
        }

        /** A row without terms says nothing, or that there is no solution, which the first variable is made to say. */
        private void end(String relation, double bound) {
            if (terms.isEmpty()) {
                boolean holds = relation.equals(">=") ? bound <= 0 : bound >= 0;
                if (holds) {
                    return;
                }
                terms.append(" + 0 impossible\n");
            }
            rows.append(" r")
                    .append(++count)
                    .append(": \n")
                    .append(terms)
                    .append(' ')
                    .append(relation);
            rows.append(' ')
                    .append(bound < 0 ? "-" : "")
                    .append(number(Math.abs(bound)))
                    .append('\n');
        }
    }
}
