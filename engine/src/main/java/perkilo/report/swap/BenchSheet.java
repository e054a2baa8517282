package perkilo.report.swap;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Decimals;
import perkilo.origin.Figure;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Row;
import perkilo.sheet.table.Table;
import perkilo.swaps.Cautions;
import perkilo.swaps.next.BenchBatch;

/**
 * The sheet of a trial batch, to weigh from and to write on: one page.
 *
 * <p>Its headings are none of those that make a table a formula: a copy that a person keeps must not be read as one.
 */
public final class BenchSheet {

    private static final int WIDE = 170;
    private static final NumberFormat GRAMS = new NumberFormat("0.00");
    private static final NumberFormat SIZE = new NumberFormat("0.00\\ \"g\"");
    private static final NumberFormat LEVEL = new NumberFormat("0.00##%");
    private static final NumberFormat DEGREES = new NumberFormat("0");

    /** What is looked at. Common practice, no source. */
    private static final List<String> OBSERVED = List.of(
            "Appearance, separation",
            "Colour",
            "Odour",
            "pH",
            "Viscosity, mPa·s (spindle, rpm, °C)",
            "Feel, spreading",
            "Other");

    private final BenchBatch batch;
    private final SheetBuilder sheet;
    private final Page page;

    private BenchSheet(BenchBatch batch) {
        this.batch = batch;
        this.sheet = new SheetBuilder(
                        AppliedFormulaSheet.tab("Bench " + batch.formula().name()))
                .onePage();
        this.page = new Page(sheet);
    }

    static ResultSheet of(BenchBatch batch) {
        return new BenchSheet(batch).write();
    }

    private ResultSheet write() {
        page.title(
                "Bench: " + batch.formula().name(),
                WIDE,
                "A trial batch, for the bench only. Change its size and all weights follow. Rename this sheet to keep what"
                        + " you write here: the next run writes it anew.");
        Column<BenchBatch> grams = Column.<BenchBatch>of("batch", "Batch")
                .value(BenchBatch::grams)
                .format(SIZE)
                .look(Look.CHOICE)
                .width(34);
        Placed<BenchBatch> head = page.table(head(grams).at(sheet, page.next(), List.of(batch)));
        Expr size = head.ref(batch, grams);
        page.skip(1);
        page.table(weights(size).at(sheet, page.next(), batch.weights()));
        if (!batch.out().isEmpty() && !batch.original().isEmpty()) {
            page.paragraph(
                    WIDE,
                    "Made from " + batch.original() + "; went out: " + String.join("; ", batch.out()) + ".",
                    Look.HINT);
        }
        if (batch.weights().stream().anyMatch(BenchBatch.Weight::isSmall)) {
            page.paragraph(
                    WIDE,
                    "“Little”: below 0.05 g a balance with two decimals is wrong by more than a tenth. Weigh a premix or"
                            + " a solution, or make a larger batch.",
                    Look.HINT);
        }
        page.skip(1);
        page.section("Observations");
        page.table(observations().at(sheet, page.next(), OBSERVED));
        page.skip(1);
        page.section("Cautions");
        List<String> cautions = new ArrayList<>(batch.cautions());
        cautions.addAll(Cautions.ALWAYS);
        cautions.forEach(caution -> page.paragraph(WIDE, caution, Look.HINT));
        return sheet.build();
    }

    private static Table<BenchBatch> head(Column<BenchBatch> grams) {
        return Table.of(
                Column.<BenchBatch>of("empty", "").width(7),
                Column.<BenchBatch>of("empty", "").width(6),
                grams,
                written("Made by"),
                written("Date"),
                written("Balance"),
                written("Stirrer"),
                written("Batch no."));
    }

    private static Column<BenchBatch> written(String heading) {
        return Column.<BenchBatch>of("written", heading).fillIn(row -> null);
    }

    private Table<BenchBatch.Weight> weights(Expr size) {
        return new Columns(batch, size).table();
    }

    /** The table of what is weighed, for JSON. */
    public static Table.Filled<?> inJson(BenchBatch batch) {
        return new Columns(batch, Expr.of(batch.grams())).table().with(batch.weights());
    }

    /** The columns of what is weighed. */
    private static final class Columns {

        private final BenchBatch batch;
        private final Expr size;
        private final int rest;

        private final Column<BenchBatch.Weight> level;
        private final Column<BenchBatch.Weight> weight;

        Columns(BenchBatch batch, Expr size) {
            this.batch = batch;
            this.size = size;
            this.rest = batch.rest();
            this.level = Column.<BenchBatch.Weight>of("percent", "Share")
                    .value(row -> row.line().level())
                    .formula(this::level)
                    .format(LEVEL)
                    .sum(BigDecimal.ONE)
                    .width(10)
                    .json(row -> row.line().level().movePointRight(2));
            this.weight = Column.<BenchBatch.Weight>of("grams", "Weight, g")
                    .value(BenchBatch.Weight::grams)
                    .formula(this::weight)
                    .format(GRAMS)
                    .look(Look.KEY)
                    .sum(batch.grams())
                    .width(10)
                    .json();
        }

        Table<BenchBatch.Weight> table() {
            return Table.of(
                    Column.<BenchBatch.Weight>of("phase", "Phase")
                            .words(row -> row.line().line().phase())
                            .width(7)
                            .json(),
                    Column.<BenchBatch.Weight>of("phaseC", "°C")
                            .value(BenchSheet::degrees)
                            .format(DEGREES)
                            .width(6)
                            .json(),
                    Column.<BenchBatch.Weight>of("material", "Weigh in")
                            .words(row -> row.line().line().material())
                            .look(row -> row.line().isChanged() ? Look.LABEL : Look.PLAIN)
                            .totalWords("Together")
                            .width(34)
                            .json(),
                    Column.<BenchBatch.Weight>of("inci", "INCI")
                            .words(row -> row.material().inci())
                            .width(34)
                            .json(),
                    level,
                    weight,
                    Column.<BenchBatch.Weight>of("weighed", "Weighed, g")
                            .fillIn(row -> null)
                            .width(11),
                    Column.<BenchBatch.Weight>of("changed", "Changed")
                            .words(BenchSheet::note)
                            .look(Look.NOTICE)
                            .width(30)
                            .json());
        }

        private @Nullable Expr level(Row<BenchBatch.Weight> row) {
            BenchBatch.Weight weight = row.entry();
            Figure typed = weight.line().line().level();
            if (typed != null) {
                return Expr.input(typed);
            }
            return Expr.of(1).minus(others(row, level));
        }

        /** Each is rounded; one takes what that leaves, so that all add up to the batch. */
        private Expr weight(Row<BenchBatch.Weight> row) {
            return row.index() == rest
                    ? size.minus(others(row, weight))
                    : row.ref(level).times(size).rounded(BenchBatch.DECIMALS);
        }

        private Expr others(Row<BenchBatch.Weight> row, Column<BenchBatch.Weight> column) {
            int last = batch.weights().size() - 1;
            Expr above = row.table().sum(column, 0, row.index() - 1);
            Expr below = row.table().sum(column, row.index() + 1, last);
            return row.index() == 0 ? below : row.index() == last ? above : above.plus(below);
        }
    }

    private static @Nullable BigDecimal degrees(BenchBatch.Weight weight) {
        Figure typed = weight.line().line().phaseC();
        return typed == null ? null : typed.value();
    }

    private static String note(BenchBatch.Weight weight) {
        List<String> notes = new ArrayList<>();
        if (weight.line().isChanged()) {
            notes.add(weight.line().change());
        }
        if (weight.isSmall()) {
            notes.add("little");
        }
        return String.join("; ", notes);
    }

    private static Table<String> observations() {
        return Table.of(
                Column.<String>of("empty", "").width(7),
                Column.<String>of("empty", "").width(6),
                Column.<String>of("observed", "Look at").words(row -> row).width(34),
                empty("When made"),
                empty("1 day"),
                empty("1 week"),
                empty("4 weeks 5 °C"),
                empty("4 weeks 40 °C"));
    }

    private static Column<String> empty(String heading) {
        return Column.<String>of("observation", heading).fillIn(row -> null).width(13);
    }

    /** The size of a batch in words. */
    static String grams(BigDecimal grams) {
        return Decimals.readable(grams, 2) + " g";
    }
}
