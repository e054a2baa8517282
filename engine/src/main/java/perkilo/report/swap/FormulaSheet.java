package perkilo.report.swap;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.model.Batching;
import perkilo.model.Formula;
import perkilo.origin.Figure;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;

/**
 * A formula as a person types it: phase, material, level in per cent or q.s., temperature; beside it how it is made, so
 * that it costs the same work and fills the same vessel as the one that it was made from.
 *
 * <p>The name stands in each row: the tab may be called otherwise, for it is short and does without some characters.
 */
final class FormulaSheet {

    private static final int LONGEST_TAB = 31;

    /** Where the table of batches begins; a blank column parts it from the formula. */
    private static final int BATCHES = 6;

    private final Formula formula;
    private final SheetBuilder sheet;

    private FormulaSheet(Formula formula) {
        this.formula = formula;
        this.sheet = new SheetBuilder(tab(formula.name())).freeze(1, 0).landscape();
    }

    static ResultSheet of(Formula formula) {
        return new FormulaSheet(formula).write();
    }

    /** The end of the name says which swap it is, and stays. */
    private static String tab(String name) {
        String allowed = name.replaceAll("[\\[\\]:*?/\\\\]", "-").replace('\'', '’');
        int tooLong = allowed.length() - LONGEST_TAB;
        if (tooLong <= 0) {
            return allowed;
        }
        int end = Math.max(allowed.lastIndexOf(" swap "), allowed.lastIndexOf(" blend "));
        return allowed.substring(0, end - tooLong - 1) + "…" + allowed.substring(end);
    }

    private ResultSheet write() {
        sheet.widths(8, 38, 12, 12, 34);
        heads(0, List.of("Phase", "Material", "% w/w", "Phase °C", "Formula"));
        int row = 1;
        for (Formula.Line line : formula.lines()) {
            line(row++, line);
        }
        if (!formula.batching().equals(Batching.ANY)) {
            making();
        }
        return sheet.build();
    }

    private void line(int row, Formula.Line line) {
        sheet.text(row, 0, line.phase(), Look.PLAIN);
        sheet.text(row, 1, line.material(), Look.PLAIN);
        Figure level = line.level();
        if (level == null) {
            sheet.text(row, 2, "q.s.", Look.PLAIN);
        } else {
            number(row, 2, level.value().movePointRight(2));
        }
        figure(row, 3, line.phaseC());
        sheet.text(row, 4, formula.name(), Look.PLAIN);
    }

    private void making() {
        Batching made = formula.batching();
        heads(
                BATCHES,
                List.of(
                        "Formula",
                        "Vessel max kg",
                        "Vessel min kg",
                        "Hold-up kg",
                        "Hours per batch",
                        "Hours per kg",
                        "Quality control per batch",
                        "Final pH",
                        "Kind"));
        sheet.width(BATCHES, 34);
        sheet.text(1, BATCHES, formula.name(), Look.PLAIN);
        figure(1, BATCHES + 1, made.vesselMax());
        figure(1, BATCHES + 2, made.vesselMin());
        figure(1, BATCHES + 3, made.holdUp());
        figure(1, BATCHES + 4, made.hoursPerBatch());
        figure(1, BATCHES + 5, made.hoursPerKg());
        figure(1, BATCHES + 6, made.qualityControlPerBatch());
        figure(1, BATCHES + 7, made.finalPh());
        sheet.text(1, BATCHES + 8, made.rinseOff() ? "rinse-off" : "leave-on", Look.PLAIN);
    }

    private void heads(int from, List<String> heads) {
        for (int column = 0; column < heads.size(); column++) {
            sheet.text(0, from + column, heads.get(column), Look.HEADER);
            if (from > 0) {
                sheet.width(from + column, 14);
            }
        }
    }

    private void figure(int row, int column, @Nullable Figure figure) {
        if (figure != null) {
            number(row, column, figure.value());
        }
    }

    private void number(int row, int column, BigDecimal value) {
        sheet.value(row, column, Expr.of(value), NumberFormat.GENERAL, Look.PLAIN);
    }
}
