package perkilo.report.swap;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.model.Batching;
import perkilo.model.Formula;
import perkilo.origin.Figure;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Table;

/**
 * The sheet of a new formula as a person types it: phase, material, level in per cent or q.s., temperature; beside it
 * how it is made, so that it takes the same work and the same vessel as the original.
 *
 * <p>Each row has the formula's name: the name of the tab may differ, because it is short and lacks some characters.
 */
final class AppliedFormulaSheet {

    private static final int LONGEST_TAB = 31;

    private AppliedFormulaSheet() {}

    static ResultSheet of(Formula formula) {
        SheetBuilder sheet = new SheetBuilder(tab(formula.name())).freeze(1, 0).landscape();
        Placed<Formula.Line> lines =
                lines(formula.name()).at(sheet, 0, formula.lines()).write();
        if (!formula.batching().equals(Batching.ANY)) {
            int afterBlank = lines.nextColumn() + 1;
            batches(formula.name())
                    .at(sheet, 0, afterBlank, List.of(formula.batching()))
                    .write();
        }
        return sheet.build();
    }

    /** The name of the tab; the end of the formula's name says which swap it is, and stays. */
    private static String tab(String name) {
        String allowed = name.replaceAll("[\\[\\]:*?/\\\\]", "-").replace('\'', '’');
        int tooLong = allowed.length() - LONGEST_TAB;
        if (tooLong <= 0) {
            return allowed;
        }
        int end = Math.max(allowed.lastIndexOf(" swap "), allowed.lastIndexOf(" blend "));
        return allowed.substring(0, end - tooLong - 1) + "…" + allowed.substring(end);
    }

    private static Table<Formula.Line> lines(String formula) {
        return Table.of(
                Column.<Formula.Line>of("phase", "Phase")
                        .words(Formula.Line::phase)
                        .width(8),
                Column.<Formula.Line>of("material", "Material")
                        .words(Formula.Line::material)
                        .width(38),
                Column.<Formula.Line>of("percent", "% w/w")
                        .value(AppliedFormulaSheet::percent)
                        .words(line -> "q.s.")
                        .width(12),
                AppliedFormulaSheet.<Formula.Line>figure("Phase °C", Formula.Line::phaseC)
                        .width(12),
                name(formula),
                Column.<Formula.Line>of("role", "Role")
                        .words(line -> line.wish().role())
                        .width(22),
                Column.<Formula.Line>of("keep", "Keep")
                        .words(line -> keep(line.wish().keep()))
                        .width(7));
    }

    private static String keep(@Nullable Boolean wish) {
        return wish == null ? "" : wish ? "yes" : "no";
    }

    private static Table<Batching> batches(String formula) {
        return Table.of(
                name(formula),
                ofBatches("Vessel max kg", Batching::vesselMax),
                ofBatches("Vessel min kg", Batching::vesselMin),
                ofBatches("Hold-up kg", Batching::holdUp),
                ofBatches("Hours per batch", Batching::hoursPerBatch),
                ofBatches("Hours per kg", Batching::hoursPerKg),
                ofBatches("Quality control per batch", Batching::qualityControlPerBatch),
                ofBatches("Final pH", Batching::finalPh),
                Column.<Batching>of("kind", "Kind")
                        .words(made -> made.kind().words())
                        .width(14));
    }

    private static @Nullable BigDecimal percent(Formula.Line line) {
        Figure level = line.level();
        return level == null ? null : level.value().movePointRight(2);
    }

    private static <R> Column<R> name(String formula) {
        return Column.<R>of("formula", "Formula").words(row -> formula).width(34);
    }

    private static Column<Batching> ofBatches(String heading, Function<Batching, @Nullable Figure> figure) {
        return AppliedFormulaSheet.<Batching>figure(heading, figure).width(14);
    }

    private static <R> Column<R> figure(String heading, Function<R, @Nullable Figure> figure) {
        return Column.<R>of(heading, heading).value(row -> {
            Figure typed = figure.apply(row);
            return typed == null ? null : typed.value();
        });
    }
}
