package perkilo.ordering.oracle;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashSet;
import java.util.Set;

/** A linear program being written: least cost, rows, and which variables are whole numbers. */
final class LpText {
    private final StringBuilder cost = new StringBuilder();
    private final StringBuilder rows = new StringBuilder();
    private final Set<String> integers = new LinkedHashSet<>();
    private final Set<String> binaries = new LinkedHashSet<>();
    private int count;

    /** A variable's part of the cost. */
    void cost(String variable, double perUnit) {
        cost.append(term(perUnit, variable)).append('\n');
    }

    void integer(String variable) {
        integers.add(variable);
    }

    void binary(String variable) {
        binaries.add(variable);
    }

    boolean knows(String binary) {
        return binaries.contains(binary);
    }

    Row row() {
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

    String text() {
        return "Minimize\n obj:\n" + cost + "Subject To\n" + rows + "Generals\n " + String.join("\n ", integers)
                + "\nBinaries\n " + String.join("\n ", binaries) + "\nEnd\n";
    }

    /** A sum of terms, to be bounded. One term a line: solvers limit how long a line may be. */
    final class Row {
        private final StringBuilder terms = new StringBuilder();

        Row plus(double factor, String variable) {
            if (factor != 0) {
                terms.append(term(factor, variable)).append('\n');
            }
            return this;
        }

        void atLeast(double bound) {
            end(">=", bound);
        }

        void atMost(double bound) {
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
