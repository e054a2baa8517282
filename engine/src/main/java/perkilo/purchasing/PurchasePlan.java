package perkilo.purchasing;

import java.util.List;

/**
 * A plan of what to buy, and when.
 *
 * @param lines ordered by period, vendor's quotes in the order of the problem; no quote twice in one period
 */
public record PurchasePlan(List<Line> lines) {

    /** Nothing is bought. */
    public static final PurchasePlan NOTHING = new PurchasePlan(List.of());

    public PurchasePlan {
        lines = isSorted(lines)
                ? List.copyOf(lines)
                : lines.stream().sorted(Line::compare).toList();
    }

    private static boolean isSorted(List<Line> lines) {
        for (int i = 1; i < lines.size(); i++) {
            if (Line.compare(lines.get(i - 1), lines.get(i)) > 0) {
                return false;
            }
        }
        return true;
    }

    /**
     * Whole packs of one quote in one period.
     *
     * @param quote index into the problem's quotes
     * @param period from zero
     * @param packs at least one
     */
    public record Line(int quote, int period, long packs) {

        public Line {
            if (packs < 1) {
                throw new IllegalArgumentException("a line needs at least one pack, but had " + packs);
            }
        }

        private static int compare(Line one, Line other) {
            int byPeriod = Integer.compare(one.period, other.period);
            return byPeriod == 0 ? Integer.compare(one.quote, other.quote) : byPeriod;
        }
    }
}
