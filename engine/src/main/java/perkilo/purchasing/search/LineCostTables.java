package perkilo.purchasing.search;

/** Tables of the cost of lines by their steps. */
final class LineCostTables {
    /** The longest line, in steps, that is kept in tables. */
    static final int LONGEST_TABLE = 1 << 14;

    private LineCostTables() {}

    /** By steps: the least of {@code costs} from there to {@code last}. */
    static double[] cheapestFrom(double[] costs, int last) {
        double[] least = new double[costs.length];
        cheapestFrom(costs, last, least);
        return least;
    }

    static void cheapestFrom(double[] costs, int last, double[] least) {
        double best = Double.POSITIVE_INFINITY;
        for (int n = last; n >= 0; n--) {
            best = Math.min(best, costs[n]);
            least[n] = best;
        }
    }
}
