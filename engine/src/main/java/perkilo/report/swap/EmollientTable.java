package perkilo.report.swap;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.model.Fact;
import perkilo.model.Material;
import perkilo.model.Traits;
import perkilo.names.Names;
import perkilo.origin.Figure;
import perkilo.sheet.Chart;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Row;
import perkilo.sheet.table.Table;
import perkilo.swaps.SwapOutcome;
import perkilo.swaps.facts.Polarity;
import perkilo.swaps.next.EmollientComparison;
import perkilo.swaps.next.EmollientComparison.Entry;

/** The table of all emollients: what is known of them, and what each costs for each run. */
public final class EmollientTable {

    private static final int MOST_RUNS = 6;
    private static final NumberFormat ONE_DECIMAL = new NumberFormat("0.0");

    /** Spreading classes with a series of their own in the chart. */
    private static final List<String> CLASSES = List.of("light", "medium", "heavy", TraitColumn.UNKNOWN);

    private final EmollientComparison comparison;
    private final NumberFormat money;
    private final List<Column<Entry>> columns = new ArrayList<>();
    private final List<Column<Entry>> charted = new ArrayList<>();
    final Column<Entry> material;
    final Column<Entry> lastFact;
    final Column<Entry> firstCost;
    private final Column<Entry> lastSaving;

    /** The emollients of an answer. */
    public EmollientTable(SwapOutcome.Found found, EmollientComparison comparison) {
        this.comparison = comparison;
        this.money = NumberFormat.money(found.book().settings().home().getCurrencyCode(), 2);
        material = TraitColumn.name(Entry::material)
                .look(row -> row.formulas().isEmpty() ? Look.PLAIN : Look.LABEL)
                .width(34)
                .json();
        columns.add(material);
        columns.add(Column.<Entry>of("formulas", "In")
                .words(row -> String.join(", ", row.formulas()))
                .width(28)
                .json(Entry::formulas));
        columns.add(TraitColumn.spreadingClass(Entry::material)
                .width(11)
                .json(row -> orNull(row.material().traits().spreadingClass())));
        columns.add(trait("spreadingValue", "Spreading, mm²/10 min", NumberFormat.WHOLE, Traits::spreadingValue));
        columns.add(trait("viscosity", "Viscosity, mPa·s", NumberFormat.WHOLE, Traits::viscosity));
        columns.add(Column.<Entry>of("polarity", "Polarity")
                .words(row -> polarity(row.material()))
                .look(row -> polarity(row.material()).equals(TraitColumn.UNKNOWN) ? Look.HINT : Look.PLAIN)
                .width(28)
                .json());
        columns.add(trait("requiredHlb", "Required HLB", ONE_DECIMAL, Traits::requiredHlb));
        columns.add(trait("naturalOrigin", "Natural origin", NumberFormat.PERCENT, Traits::naturalOriginIndex));
        columns.add(trait("useMin", "Use from", NumberFormat.PERCENT, Traits::useMin));
        lastFact = trait("useMax", "Use to", NumberFormat.PERCENT, Traits::useMax);
        columns.add(lastFact);
        int shown = Math.min(MOST_RUNS, comparison.runs().size());
        List<Column<Entry>> costs = new ArrayList<>();
        for (int run = 0; run < shown; run++) {
            costs.add(cost(run));
        }
        List<Column<Entry>> savings = new ArrayList<>();
        for (int run = 0; run < shown; run++) {
            savings.add(saving(run, costs.get(run)));
        }
        columns.addAll(costs);
        columns.addAll(savings);
        columns.add(Column.<Entry>of("perKgs", "").notOnSheet().json(row -> byRun(row, false)));
        columns.add(Column.<Entry>of("savingsPerKg", "").notOnSheet().json(row -> byRun(row, true)));
        firstCost = costs.get(0);
        lastSaving = savings.get(savings.size() - 1);
        for (String spreading : CLASSES) {
            charted.add(charted(spreading, costs.get(Math.min(comparison.largest(), shown - 1))));
        }
        columns.add(Column.<Entry>of("", "").width(3));
        columns.addAll(charted);
    }

    private static Column<Entry> trait(
            String key, String heading, NumberFormat format, Function<Traits, @Nullable Figure> trait) {
        return TraitColumn.figure(key, heading, format, Entry::material, trait)
                .width(11)
                .json(row -> {
                    Figure figure = trait.apply(row.material().traits());
                    return figure == null ? null : figure.value();
                });
    }

    private static @Nullable String orNull(String word) {
        return word.isEmpty() ? null : word;
    }

    /** As published for the substance, or else as the materials sheet has it. */
    private static String polarity(Material material) {
        String typed = material.traits().word(Fact.POLARITY);
        return Polarity.of(material.inci()).map(Polarity::words).orElse(typed.isEmpty() ? TraitColumn.UNKNOWN : typed);
    }

    private Column<Entry> cost(int run) {
        return Column.<Entry>of("perKg", "Per kg, run " + (run + 1))
                .value(row -> row.perKg().get(run))
                .words(row -> "no offer")
                .wordsLook(Look.HINT)
                .format(money)
                .width(12);
    }

    /** Against the material of the run's line: what a kilogram of it costs less. */
    private Column<Entry> saving(int run, Column<Entry> cost) {
        return Column.<Entry>of("saving", "Saving, run " + (run + 1))
                .value(row -> saving(row, run))
                .formula(row -> {
                    int reference = reference(run);
                    return reference < 0 || saving(row.entry(), run) == null
                            ? null
                            : row.table().ref(reference, cost).minus(row.ref(cost));
                })
                .format(money)
                .look(row -> isLineOf(row, run) ? Look.HINT : Look.KEY)
                .width(12);
    }

    private @Nullable BigDecimal saving(Entry entry, int run) {
        int reference = reference(run);
        BigDecimal cost = entry.perKg().get(run);
        BigDecimal now = reference < 0
                ? null
                : comparison.entries().get(reference).perKg().get(run);
        return cost == null || now == null ? null : now.subtract(cost);
    }

    /** The row of the material of a run's line; below zero for none. */
    private int reference(int run) {
        for (int i = 0; i < comparison.entries().size(); i++) {
            if (isLineOf(comparison.entries().get(i), run)) {
                return i;
            }
        }
        return -1;
    }

    private boolean isLineOf(Entry entry, int run) {
        return Names.key(entry.material().name())
                .equals(Names.key(comparison.runs().get(run).line().material().name()));
    }

    private Map<String, Object> byRun(Entry entry, boolean savings) {
        Map<String, Object> all = new LinkedHashMap<>();
        for (int run = 0; run < comparison.runs().size(); run++) {
            BigDecimal amount = savings ? saving(entry, run) : entry.perKg().get(run);
            if (amount != null) {
                all.put(comparison.runs().get(run).run().needs().title(), amount);
            }
        }
        return all;
    }

    /** What the chart draws: the cost of those that spread alike. */
    private Column<Entry> charted(String spreading, Column<Entry> cost) {
        return Column.<Entry>of("charted", spreading)
                .formula(row -> isOf(row, spreading) && row.has(cost) ? row.ref(cost) : null)
                .format(money)
                .look(Look.HINT)
                .width(11);
    }

    private static boolean isOf(Row<Entry> row, String spreading) {
        String typed = row.entry().material().traits().spreadingClass();
        return CLASSES.contains(typed) ? typed.equals(spreading) : spreading.equals(TraitColumn.UNKNOWN);
    }

    /** The table on a sheet. */
    Placed<Entry> at(SheetBuilder sheet, int headRow) {
        return new Table<>(columns).at(sheet, headRow, comparison.entries());
    }

    /** The last column that is printed. */
    Column<Entry> lastPrinted() {
        return lastSaving;
    }

    /**
     * What the chart shows: the cost for the first run, a series for each spreading class that is there.
     *
     * @param rows so many of the cheapest
     */
    List<Chart.Series> series(Placed<Entry> placed, int rows) {
        List<Chart.Series> series = new ArrayList<>();
        for (int i = 0; i < CLASSES.size(); i++) {
            Column<Entry> column = charted.get(i);
            boolean any = false;
            for (int row = 0; row < rows; row++) {
                any |= placed.hasFigure(row, column);
            }
            if (any) {
                series.add(new Chart.Series(
                        "spreading " + CLASSES.get(i),
                        placed.range(material, 0, rows - 1),
                        placed.range(column, 0, rows - 1)));
            }
        }
        return series;
    }

    /** The table for JSON. */
    public Table.Filled<?> inJson() {
        return new Table<>(columns).with(comparison.entries());
    }
}
