package perkilo.report.prices;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.costing.CostEffect;
import perkilo.costing.RunCost;
import perkilo.offers.history.PriceChange;
import perkilo.offers.history.PriceChanges;
import perkilo.offers.history.QuotedPrice;
import perkilo.origin.Decimals;
import perkilo.origin.Figure;
import perkilo.report.part.Lines;
import perkilo.report.part.QuoteDates;
import perkilo.sheet.Chart;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;

/** Price changes: the effect on each run, then each price that changed, those that changed most first. */
final class ChangesSheet {

    private static final int MOST_DRAWN = 12;
    private static final int LAST_COLUMN = 12;
    private static final int BEFORE = 5;
    private static final int NOW = 7;
    private static final int VALID = 11;
    private static final int CHART_ROWS = 17;
    private static final int PRICE_DECIMALS = 4;

    private final PriceChanges changes;
    private final @Nullable CostEffect effect;
    private final Figure ageLimit;
    private final SheetBuilder sheet = new SheetBuilder("Price changes");
    private int next;

    ChangesSheet(PriceChanges changes, @Nullable CostEffect effect, Figure ageLimit) {
        this.changes = changes;
        this.effect = effect;
        this.ageLimit = ageLimit;
    }

    ResultSheet sheet() {
        sheet.widths(30, 30, 12, 12, 9, 13, 17, 13, 17, 15, 11, 12, 24).landscape();
        sheet.text(next++, 0, "Price changes on " + changes.on(), Look.TITLE);
        sheet.text(next++, 0, changes.answer(), Look.ANSWER);
        sheet.text(
                next++,
                0,
                "Each supplier's newest list against what he quoted before it, for the same pack and the same quantity, in"
                        + " his currency.",
                Look.HINT);
        if (!changes.alone().isEmpty()) {
            sheet.text(
                    next++,
                    0,
                    "Only one list yet, so nothing to compare: " + String.join(", ", changes.alone()) + ".",
                    Look.HINT);
        }
        Lines rows = new Lines(sheet, next + 1);
        QuoteDates dates = QuoteDates.write(rows, changes.on(), ageLimit);
        next = rows.next() + 1;
        int charts = next;
        boolean drawn = room();
        CostEffect cost = effect;
        int[] runs = cost == null || cost.runs().isEmpty() ? null : runs(cost);
        int[] prices = prices(dates);
        if (drawn) {
            draw(charts, runs, prices);
        }
        return sheet.build();
    }

    /** Leaves rows for the charts, if there is anything to draw. */
    private boolean room() {
        boolean any = drawnPrices() > 0 || (effect != null && !effect.runs().isEmpty());
        next += any ? CHART_ROWS + 1 : 0;
        return any;
    }

    private int drawnPrices() {
        return (int) changes.changed().stream()
                .filter(change -> change.fraction().isPresent())
                .limit(MOST_DRAWN)
                .count();
    }

    private int[] runs(CostEffect cost) {
        sheet.text(next++, 0, "What it does to each run", Look.SECTION);
        heads(List.of("Run", "", "", "", "Per", "", "Cost before", "", "Cost now", "Change", "Change %", "", ""));
        int first = next;
        for (CostEffect.OfRun run : cost.runs()) {
            run(run);
        }
        int last = next - 1;
        sheet.text(
                next++,
                0,
                "Each run is bought for anew at both prices, each time the cheapest way, so these two costs are values; units"
                        + " for products, kilograms for bulk.",
                Look.HINT);
        next++;
        return new int[] {first, last};
    }

    private void run(CostEffect.OfRun run) {
        int row = next++;
        RunCost now = run.now();
        boolean units = now.unitCost().isPresent();
        NumberFormat money = NumberFormat.money(now.home().getCurrencyCode(), PRICE_DECIMALS);
        sheet.text(row, 0, now.needs().title(), Look.LABEL);
        sheet.text(row, 4, units ? "unit" : "kg", Look.PLAIN);
        Expr cost = sheet.value(row, 8, Expr.of(now.unitCost().orElseGet(now::bulkPerKg)), money, Look.KEY);
        RunCost earlier = run.before();
        if (earlier == null) {
            sheet.text(row, 6, "not known", Look.HINT);
            return;
        }
        Expr before = sheet.value(row, 6, Expr.of(earlier.unitCost().orElseGet(earlier::bulkPerKg)), money, Look.PLAIN);
        change(row, before, cost, money);
    }

    private void change(int row, Expr before, Expr now, NumberFormat money) {
        Expr change = sheet.value(row, 9, now.minus(before), money, Look.PLAIN);
        if (before.value().signum() != 0) {
            sheet.value(row, 10, change.over(before), NumberFormat.PERCENT, Look.PLAIN);
        }
    }

    private int[] prices(QuoteDates dates) {
        List<PriceChange> changed = changes.changed();
        sheet.text(next++, 0, "Prices that changed", Look.SECTION);
        if (changed.isEmpty()) {
            sheet.text(next++, 0, "None.", Look.PLAIN);
            return new int[] {next, next - 1};
        }
        heads(List.of(
                "Item",
                "Supplier",
                "Pack",
                "From",
                "Price per",
                "Before, of",
                "Price before",
                "Now, of",
                "Price now",
                "Change",
                "Change %",
                "Valid until",
                "What became of it"));
        int first = next;
        changed.forEach(this::price);
        sheet.filter(first - 1, 0, next - 1, LAST_COLUMN);
        sheet.highlight(first, 10, next - 1, 10, ResultSheet.Condition.ABOVE_ZERO, Look.WARNING);
        dates.markQuoted(first, next - 1, NOW);
        dates.markValid(first, next - 1, VALID);
        return new int[] {first, first + drawnPrices() - 1};
    }

    private void price(PriceChange change) {
        int row = next++;
        sheet.text(row, 0, change.offer().item(), Look.LABEL, change.offer().origin());
        sheet.text(row, 1, change.offer().supplier(), Look.PLAIN);
        sheet.text(row, 2, change.offer().pack(), Look.PLAIN);
        boolean fromFirst = change.from().signum() == 0;
        String quantity = Decimals.readable(change.from(), 3) + " "
                + change.offer().packUnit().symbol();
        sheet.text(row, 3, fromFirst ? "first pack" : quantity, Look.PLAIN);
        Expr before = quoted(row, BEFORE, change.before());
        Expr now = quoted(row, NOW, change.now());
        if (change.now() != null) {
            QuoteDates.date(sheet, row, VALID, change.now().offer().validUntil());
        }
        boolean comparable = change.fraction().isPresent();
        if (comparable && before != null && now != null) {
            change(row, before, now, money(change));
        }
        sheet.text(row, LAST_COLUMN, change.kind().word(), Look.PLAIN);
    }

    private @Nullable Expr quoted(int row, int column, @Nullable QuotedPrice price) {
        if (price == null) {
            return null;
        }
        QuoteDates.date(sheet, row, column, price.offer().quotedOn());
        sheet.text(row, 4, price.unit().symbol(), Look.PLAIN);
        NumberFormat money = NumberFormat.money(price.offer().currency().getCurrencyCode(), PRICE_DECIMALS);
        return sheet.checked(row, column + 1, perUnit(price), price.perUnit(), money, Look.PLAIN);
    }

    private static Expr perUnit(QuotedPrice price) {
        Expr quoted = Expr.input(price.at().price());
        if (price.at().per() == null) {
            return quoted.over(Expr.input(price.offer().packSize()));
        }
        return price.factor().compareTo(BigDecimal.ONE) == 0 ? quoted : quoted.times(Expr.of(price.factor()));
    }

    private static NumberFormat money(PriceChange change) {
        return NumberFormat.money(change.offer().currency().getCurrencyCode(), PRICE_DECIMALS);
    }

    private void heads(List<String> heads) {
        for (int column = 0; column < heads.size(); column++) {
            sheet.text(next, column, heads.get(column), Look.HEADER);
        }
        next++;
    }

    private void draw(int top, int @Nullable [] runs, int[] prices) {
        int bottom = top + CHART_ROWS - 1;
        boolean both = runs != null && prices[1] >= prices[0];
        if (prices[1] >= prices[0]) {
            sheet.chart(columns("Prices that changed most", "Item", prices, top, 0, bottom, both ? 3 : LAST_COLUMN));
        }
        if (runs != null) {
            sheet.chart(columns("Cost of each run", "Run", runs, top, both ? 4 : 0, bottom, LAST_COLUMN));
        }
    }

    private Chart columns(String title, String across, int[] rows, int top, int left, int bottom, int right) {
        Chart.Series series = new Chart.Series(
                "Change %", sheet.range(rows[0], 0, rows[1], 0), sheet.range(rows[0], 10, rows[1], 10));
        return new Chart(
                Chart.Kind.STACKED_COLUMNS,
                title,
                across,
                "Change since the last list",
                NumberFormat.PERCENT,
                false,
                List.of(series),
                top,
                left,
                bottom,
                right);
    }
}
