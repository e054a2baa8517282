package perkilo.report.prices;

import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.costing.CostEffect;
import perkilo.costing.RunAnswer;
import perkilo.offers.history.PriceChange;
import perkilo.offers.history.PriceChanges;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.report.part.Lines;
import perkilo.report.part.QuoteDates;
import perkilo.sheet.Chart;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.Sign;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Placed;

/** Price changes: the effect on each run, then each changed price, the largest changes first. */
final class ChangesSheet {

    private static final int MOST_DRAWN = 12;
    private static final int NAMED = 5;
    private static final int CHART_ROWS = 17;

    private final PriceChanges changes;
    private final @Nullable CostEffect effect;
    private final List<RunAnswer> incomplete;
    private final Figure ageLimit;
    private final int drawnPrices;
    private final SheetBuilder sheet = new SheetBuilder("Price changes");
    private int next;

    ChangesSheet(PriceChanges changes, @Nullable CostEffect effect, Figure ageLimit) {
        this.changes = changes;
        this.effect = effect == null || effect.runs().isEmpty() ? null : effect;
        this.incomplete = effect == null ? List.of() : effect.incomplete();
        this.ageLimit = ageLimit;
        this.drawnPrices = (int) changes.changed().stream()
                .filter(change -> change.fraction().isPresent())
                .limit(MOST_DRAWN)
                .count();
    }

    ResultSheet sheet() {
        sheet.landscape();
        sheet.title(next++, "Price changes on " + changes.on());
        sheet.answer(next++, changes.answer());
        sheet.hint(
                next++,
                "Each supplier's newest list against their earlier quotes, for the same pack and the same quantity, in the"
                        + " supplier's currency.");
        if (!changes.alone().isEmpty()) {
            sheet.hint(next++, "Nothing to compare yet (one list only): " + String.join(", ", changes.alone()) + ".");
        }
        Lines lines = new Lines(sheet, next + 1);
        QuoteDates dates = QuoteDates.write(lines, changes.on(), ageLimit);
        next = lines.next() + 1;
        tables(dates);
        return sheet.build();
    }

    /** The charts are above the tables that they show. */
    private void tables(QuoteDates dates) {
        CostEffect cost = effect;
        int top = next;
        boolean anyChart = drawnPrices > 0 || cost != null;
        next += anyChart ? CHART_ROWS + 1 : 0;
        Chart.Series runs = cost == null ? null : runs(cost);
        leftOut();
        prices(dates, runs, top);
    }

    /** The runs that cannot be compared, each with what it lacks. */
    private void leftOut() {
        for (RunAnswer answer : incomplete) {
            String words = Sign.ATTENTION + " " + answer.title() + ": " + answer.lacks(NAMED);
            Origin first = answer.missing().get(0).origin();
            sheet.text(next++, SheetBuilder.FIRST_COLUMN, words, Look.ERROR, first);
        }
        next += incomplete.isEmpty() ? 0 : 1;
    }

    private Chart.Series runs(CostEffect cost) {
        sheet.section(next++, "Effect on each run");
        EffectTable table = new EffectTable(cost);
        Placed<CostEffect.OfRun> runs = table.at(sheet, next).write();
        next = runs.next();
        sheet.hint(
                next++,
                "Both costs are fixed values, for one unit or one kilogram of bulk: each run is planned at the lowest cost,"
                        + " once at the old and once at the new prices.");
        next++;
        return series(runs, table.run, table.fraction, cost.runs().size());
    }

    private void prices(QuoteDates dates, Chart.@Nullable Series runs, int top) {
        sheet.section(next++, "Prices that changed");
        PriceTable table = new PriceTable(changes);
        Placed<PriceChange> prices = table.at(sheet, next, dates).widen();
        if (changes.changed().isEmpty()) {
            sheet.text(next++, SheetBuilder.FIRST_COLUMN, "None.", Look.PLAIN);
        } else {
            next = prices.write().filter().next();
        }
        int left = prices.column(table.item);
        int right = prices.column(table.kind);
        boolean drawn = drawnPrices > 0;
        boolean both = drawn && runs != null;
        if (drawn) {
            Chart.Series series = series(prices, table.item, table.fraction, drawnPrices);
            int end = both ? prices.column(table.from) : right;
            sheet.chart(chart("Prices that changed most", table.item.heading(), series, top, left, end));
        }
        if (runs != null) {
            int begin = both ? prices.column(table.per) : left;
            sheet.chart(chart("Cost of each run", "Run", runs, top, begin, right));
        }
    }

    private static <R> Chart.Series series(Placed<R> placed, Column<R> names, Column<R> change, int rows) {
        return new Chart.Series(change.heading(), placed.range(names, 0, rows - 1), placed.range(change, 0, rows - 1));
    }

    private static Chart chart(String title, String across, Chart.Series series, int top, int left, int right) {
        return new Chart(
                Chart.Kind.STACKED_COLUMNS,
                title,
                new Chart.Axes(across, "Change since the last list", NumberFormat.PERCENT, false),
                List.of(series),
                new Chart.Place(top, left, top + CHART_ROWS - 1, right));
    }
}
