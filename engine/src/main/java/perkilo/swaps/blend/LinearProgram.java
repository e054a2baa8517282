package perkilo.swaps.blend;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A linear program: find x within bounds so that {@code cost · x} is smallest and every row {@code lower ≤ weights · x
 * ≤ upper} holds.
 *
 * <p>Bounds and sides may be infinite.
 */
public final class LinearProgram {

    /** By how much an answer may miss a constraint, relative to the size of its terms. */
    public static final double TOLERANCE = 1e-7;

    private final double[] cost;
    private final double[] least;
    private final double[] most;
    private final List<Row> rows = new ArrayList<>();

    /**
     * A program without rows.
     *
     * @param cost of one of each variable
     * @param least of each variable
     * @param most of each variable
     */
    public LinearProgram(double[] cost, double[] least, double[] most) {
        this.cost = cost.clone();
        this.least = least.clone();
        this.most = most.clone();
    }

    /** One row. */
    public static final class Row {

        private final double[] weights;
        private final double lower;
        private final double upper;

        Row(double[] weights, double lower, double upper) {
            this.weights = weights.clone();
            this.lower = lower;
            this.upper = upper;
        }

        /** The weight of a variable. */
        public double weight(int variable) {
            return weights[variable];
        }

        /** The smallest value of the row. */
        public double lower() {
            return lower;
        }

        /** The largest value of the row. */
        public double upper() {
            return upper;
        }
    }

    /** Adds a row. */
    public LinearProgram row(double[] weights, double lower, double upper) {
        rows.add(new Row(weights, lower, upper));
        return this;
    }

    /** The same program with other bounds. */
    LinearProgram bounded(double[] otherLeast, double[] otherMost) {
        LinearProgram other = new LinearProgram(cost, otherLeast, otherMost);
        other.rows.addAll(rows);
        return other;
    }

    /** How many variables there are. */
    public int size() {
        return cost.length;
    }

    /** The cost of one of a variable. */
    public double cost(int variable) {
        return cost[variable];
    }

    /** The least of a variable. */
    public double least(int variable) {
        return least[variable];
    }

    /** The most of a variable. */
    public double most(int variable) {
        return most[variable];
    }

    /** The rows. */
    public List<Row> rows() {
        return List.copyOf(rows);
    }

    /** What values cost. */
    public double costOf(double[] values) {
        return dot(cost, values);
    }

    /** Whether values keep all bounds and rows, within {@link #TOLERANCE}. */
    public boolean isKeptBy(double[] values) {
        for (int i = 0; i < cost.length; i++) {
            double allowed = TOLERANCE * Math.max(1, Math.abs(values[i]));
            if (values[i] < least[i] - allowed || values[i] > most[i] + allowed) {
                return false;
            }
        }
        return rows.stream().allMatch(row -> isKept(row, values));
    }

    private static boolean isKept(Row row, double[] values) {
        double size = 0;
        for (int i = 0; i < values.length; i++) {
            size = Math.max(size, Math.abs(row.weights[i] * values[i]));
        }
        double allowed = TOLERANCE * Math.max(1, size);
        double value = dot(row.weights, values);
        return value >= row.lower - allowed && value <= row.upper + allowed;
    }

    private static double dot(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }

    @Override
    public String toString() {
        return "least %s in %s rows over %s".formatted(Arrays.toString(cost), rows.size(), Arrays.toString(most));
    }
}
