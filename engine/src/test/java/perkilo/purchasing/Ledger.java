package perkilo.purchasing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import perkilo.Ratio;

/**
 * A shelf simulated as a ledger: every lot is a row of a table with what is left of it, and each period walks the rows
 * anew, the row that expires first before the others. It shares nothing with the engine's shelf.
 */
final class Ledger {

    /** A row: when it came, the last period it can be used in, whether it is bought, what is left of it. */
    private static final class Row {
        private final int came;
        private final long last;
        private final boolean bought;
        private Ratio left;

        Row(int came, long last, boolean bought, BigDecimal quantity) {
            this.came = came;
            this.last = last;
            this.bought = bought;
            this.left = Ratio.of(quantity);
        }
    }

    private final List<Row> rows = new ArrayList<>();
    private final List<Ratio> uncovered = new ArrayList<>();
    private final List<Ratio> closing = new ArrayList<>();
    private final List<Ratio> expired = new ArrayList<>();
    private final int periods;

    Ledger(Need need, List<BigDecimal> bought) {
        periods = need.perPeriod().size();
        need.stock()
                .forEach(lot -> rows.add(
                        new Row(lot.arrival(), last(lot.arrival(), lot.usablePeriods()), false, lot.quantity())));
        for (int period = 0; period < periods; period++) {
            rows.add(new Row(period, last(period, need.usablePeriods()), true, bought.get(period)));
        }
        for (int period = 0; period < periods; period++) {
            walk(period, Ratio.of(need.perPeriod().get(period)));
        }
    }

    private static long last(int came, int usable) {
        return usable == Need.UNLIMITED ? Long.MAX_VALUE : (long) came + usable - 1;
    }

    private void walk(int period, Ratio wanted) {
        Ratio missing = wanted;
        List<Row> usable = rows.stream()
                .filter(row -> row.came <= period && row.last >= period)
                .sorted(Comparator.comparingLong((Row row) -> row.last).thenComparing(row -> row.bought))
                .toList();
        for (Row row : usable) {
            Ratio taken = row.left.min(missing);
            row.left = row.left.minus(taken);
            missing = missing.minus(taken);
        }
        uncovered.add(missing);
        closing.add(Ratio.sum(rows.stream().filter(row -> row.came <= period).map(row -> row.left)));
        expired.add(Ratio.sum(rows.stream()
                .filter(row -> row.came <= period && Math.max(row.came, row.last) == period)
                .map(row -> row.left)));
    }

    List<Ratio> uncovered() {
        return uncovered;
    }

    List<Ratio> closing() {
        return closing;
    }

    List<Ratio> expired() {
        return expired;
    }

    Ratio closingOfAllPeriods() {
        return Ratio.sum(closing.stream());
    }

    Ratio left() {
        return Ratio.sum(rows.stream()
                .filter(row -> row.came < periods && row.last >= periods)
                .map(row -> row.left));
    }

    Ratio leftFromPurchases() {
        return Ratio.sum(
                rows.stream().filter(row -> row.last >= periods && row.bought).map(row -> row.left));
    }
}
