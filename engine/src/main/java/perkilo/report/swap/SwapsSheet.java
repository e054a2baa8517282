package perkilo.report.swap;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.model.Formula;
import perkilo.origin.Figure;
import perkilo.sheet.Chart;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.swaps.Rejected;
import perkilo.swaps.Swap;
import perkilo.swaps.SwapOutcome;
import perkilo.swaps.facts.NaturalOrigin;
import perkilo.swaps.gate.Gates;
import perkilo.swaps.gate.Verdict;
import perkilo.swaps.money.RunChange;

/**
 * Swaps: what could replace what, ranked, with what it saves at each run size; below it what is not offered, and why.
 */
final class SwapsSheet {

    static final String NAME = "Swaps";

    private static final int MOST_RUNS = 6;
    private static final int FIXED = 8;
    private static final int PER_RUN = 7;

    /** The columns that say which swap a row is about. */
    private static final int NAMES = 6;

    private static final int CHART_ROWS = 22;

    /** Letters that fit above the columns that every printed page repeats. */
    private static final int WIDE = 110;

    private final SwapOutcome.Found found;
    private final SheetBuilder sheet = new SheetBuilder(NAME);
    private final Page page = new Page(sheet);
    private final NumberFormat money;
    private final int runs;

    private SwapsSheet(SwapOutcome.Found found) {
        this.found = found;
        this.money = NumberFormat.money(found.book().settings().home().getCurrencyCode(), 4);
        this.runs = found.swaps().stream()
                .mapToInt(swap -> Math.min(MOST_RUNS, swap.runs().size()))
                .max()
                .orElse(0);
    }

    static ResultSheet of(SwapOutcome.Found found) {
        return new SwapsSheet(found).write();
    }

    private ResultSheet write() {
        sheet.widths(6, 14, 7, 33, 8, 35, 9, 10).landscape();
        widths();
        page.title(
                NAME,
                WIDE,
                "Ranked by saving times closeness. Amounts are values out of full purchase plans, as the choice of what to"
                        + " buy differs; changes are formulas over them. All in "
                        + found.book().settings().home() + ", prices of "
                        + found.book().settings().costingDate() + ".");
        page.cautions();
        if (found.swaps().isEmpty()) {
            sheet.text(page.take(), 0, found.withoutSwaps(), Look.ANSWER);
        } else {
            swaps();
        }
        page.skip(1);
        rejected();
        return sheet.build();
    }

    private void swaps() {
        int chartTop = page.next();
        page.skip(CHART_ROWS + 1);
        int heads = page.next();
        page.heads(heads());
        for (int i = 0; i < found.swaps().size(); i++) {
            swap(page.take(), i + 1, found.swaps().get(i));
        }
        int last = page.next() - 1;
        sheet.filter(heads, 0, last, columns() - 1);
        for (int run = 0; run < runs; run++) {
            int first = FIXED + run * PER_RUN;
            sheet.highlight(heads + 1, first + 3, last, first + 3, ResultSheet.Condition.ABOVE_ZERO, Look.WARNING);
            sheet.highlight(heads + 1, first + 3, last, first + 3, ResultSheet.Condition.LOWEST_OF_RANGE, Look.ANSWER);
            sheet.highlight(heads + 1, first + 6, last, first + 6, ResultSheet.Condition.ABOVE_ZERO, Look.WARNING);
        }
        chart(chartTop, heads + 1);
        print(heads, last);
    }

    /** In print the first run stands beside its swap; each other run has pages of its own, with what is swapped. */
    private void print(int heads, int last) {
        List<Integer> breaks = new ArrayList<>();
        for (int run = 1; run < runs; run++) {
            breaks.add(FIXED + run * PER_RUN);
        }
        sheet.pages(new ResultSheet.Pages(last, FIXED + runs * PER_RUN - 1, heads, NAMES, breaks));
    }

    private void widths() {
        for (int run = 0; run < runs; run++) {
            int first = FIXED + run * PER_RUN;
            sheet.width(first, 22);
            for (int column = first + 1; column < first + PER_RUN; column++) {
                sheet.width(column, 12);
            }
        }
        int[] rest = {12, 12, 40, 44, 44, 110, 110};
        for (int i = 0; i < rest.length; i++) {
            sheet.width(FIXED + runs * PER_RUN + i, rest[i]);
        }
    }

    private int columns() {
        return FIXED + runs * PER_RUN + 7;
    }

    private List<String> heads() {
        List<String> heads = new ArrayList<>(
                List.of("No.", "Formula", "Phase", "Material", "Level", "Candidate", "New level", "Closeness of 100"));
        for (int run = 0; run < runs; run++) {
            String number = runs == 1 ? "" : " " + (run + 1);
            heads.add("Run" + number);
            heads.add("Unit cost now" + number);
            heads.add("Unit cost then" + number);
            heads.add("Unit cost change" + number);
            heads.add("Per kg change" + number);
            heads.add("Outlay then" + number);
            heads.add("Outlay change" + number);
        }
        heads.addAll(List.of(
                "Natural origin now",
                "Natural origin then",
                "Allergens",
                "Enters the label",
                "Leaves the label",
                "Cautions",
                "Closeness by trait"));
        return heads;
    }

    private void swap(int row, int number, Swap swap) {
        page.number(row, 0, BigDecimal.valueOf(number), NumberFormat.WHOLE);
        Formula.Line line = swap.trial().portion().line();
        sheet.text(row, 1, swap.formula().name(), Look.PLAIN, swap.formula().origin());
        sheet.text(row, 2, line.phase(), Look.PLAIN);
        sheet.text(row, 3, swap.trial().from().name(), Look.LABEL, line.origin());
        level(row, 4, line.level(), swap.trial().dose().from());
        sheet.text(
                row, 5, swap.trial().to().name(), Look.LABEL, swap.trial().to().origin());
        sheet.value(row, 6, Expr.of(swap.newLevel()), NumberFormat.PERCENT, Look.PLAIN);
        page.number(row, 7, swap.closeness().score(), new NumberFormat("0.0"));
        for (int run = 0; run < Math.min(runs, swap.runs().size()); run++) {
            run(row, FIXED + run * PER_RUN, swap.runs().get(run));
        }
        rest(row, FIXED + runs * PER_RUN, swap);
    }

    private void level(int row, int column, @Nullable Figure typed, BigDecimal level) {
        if (typed == null) {
            sheet.value(row, column, Expr.of(level), NumberFormat.PERCENT, Look.PLAIN);
        } else {
            sheet.value(row, column, Expr.input(typed), NumberFormat.PERCENT, Look.PLAIN, typed.origin());
        }
    }

    private void run(int row, int column, RunChange run) {
        sheet.text(row, column, run.before().needs().title(), Look.PLAIN);
        run.before().unitCost().ifPresent(before -> {
            Expr now = page.number(row, column + 1, before, money);
            Expr then = page.number(row, column + 2, run.after().unitCost().orElseThrow(), money);
            sheet.value(row, column + 3, then.minus(now), money, Look.KEY);
        });
        page.number(row, column + 4, run.perKg(), money);
        Expr outlay = page.number(row, column + 5, run.after().outlay(), money2());
        sheet.value(row, column + 6, outlay.minus(Expr.of(run.before().outlay())), money2(), Look.PLAIN);
    }

    private void rest(int row, int column, Swap swap) {
        natural(row, column, swap.trial().before().naturalOrigin());
        natural(row, column + 1, swap.trial().after().naturalOrigin());
        String allergens = swap.verdicts().stream()
                .filter(verdict -> verdict.gate().equals(Gates.ALLERGENS))
                .map(Verdict::why)
                .findFirst()
                .orElse("");
        sheet.text(row, column + 2, allergens, Look.PLAIN);
        sheet.text(row, column + 3, String.join(", ", swap.label().enters()), Look.PLAIN);
        sheet.text(row, column + 4, String.join(", ", swap.label().leaves()), Look.PLAIN);
        sheet.text(
                row,
                column + 5,
                String.join("; ", swap.cautions()),
                swap.cautions().isEmpty() ? Look.PLAIN : Look.WARNING);
        sheet.text(row, column + 6, swap.closeness().words(), Look.PLAIN);
    }

    private void natural(int row, int column, NaturalOrigin content) {
        if (content.isComplete()) {
            page.number(row, column, content.known(), NumberFormat.PERCENT);
        } else {
            sheet.text(row, column, "unknown", Look.HINT);
        }
    }

    private NumberFormat money2() {
        return NumberFormat.money(found.book().settings().home().getCurrencyCode(), 2);
    }

    private void rejected() {
        page.section("Not offered, and why");
        page.heads(
                List.of("", "Formula", "Phase", "Material", "Level", "Candidate", "", "Closeness of 100", "Why not"));
        for (Rejected no : found.rejected()) {
            int row = page.take();
            Formula.Line line = no.trial().portion().line();
            sheet.text(row, 1, no.trial().before().formula().name(), Look.PLAIN);
            sheet.text(row, 2, line.phase(), Look.PLAIN);
            sheet.text(row, 3, no.trial().from().name(), Look.PLAIN, line.origin());
            level(row, 4, line.level(), no.trial().dose().from());
            sheet.text(row, 5, no.trial().to().name(), Look.PLAIN);
            page.number(row, 7, no.closeness().score(), new NumberFormat("0.0"));
            sheet.text(row, FIXED, no.reason(), Look.HINT);
        }
    }

    /** Change of unit cost at the first run size against closeness. */
    private void chart(int top, int first) {
        int last = first + found.swaps().size() - 1;
        Chart.Series series = new Chart.Series(
                "change of unit cost, first run size",
                sheet.range(first, 7, last, 7),
                sheet.range(first, FIXED + 3, last, FIXED + 3));
        sheet.chart(new Chart(
                Chart.Kind.SCATTER,
                "Change of unit cost against closeness",
                "Closeness of 100",
                found.book().settings().home() + " per unit; below zero is a saving",
                new NumberFormat("0.000"),
                false,
                List.of(series),
                top,
                0,
                top + CHART_ROWS,
                NAMES - 1));
    }
}
