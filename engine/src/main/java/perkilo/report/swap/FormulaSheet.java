package perkilo.report.swap;

import java.math.BigDecimal;
import perkilo.model.Formula;
import perkilo.origin.Figure;
import perkilo.report.Expr;
import perkilo.report.Look;
import perkilo.report.NumberFormat;
import perkilo.report.ResultSheet;
import perkilo.report.SheetBuilder;

/** A formula as a person types it: phase, material, level in per cent or q.s., temperature. */
final class FormulaSheet {

    private FormulaSheet() {}

    static ResultSheet of(Formula formula) {
        SheetBuilder sheet =
                new SheetBuilder(formula.name()).widths(8, 38, 12, 12).freeze(1, 0);
        String[] heads = {"Phase", "Material", "% w/w", "Phase °C"};
        for (int column = 0; column < heads.length; column++) {
            sheet.text(0, column, heads[column], Look.HEADER);
        }
        int row = 1;
        for (Formula.Line line : formula.lines()) {
            line(sheet, row++, line);
        }
        return sheet.build();
    }

    private static void line(SheetBuilder sheet, int row, Formula.Line line) {
        sheet.text(row, 0, line.phase(), Look.PLAIN);
        sheet.text(row, 1, line.material(), Look.PLAIN);
        Figure level = line.level();
        if (level == null) {
            sheet.text(row, 2, "q.s.", Look.PLAIN);
        } else {
            number(sheet, row, 2, level.value().movePointRight(2));
        }
        Figure degrees = line.phaseC();
        if (degrees != null) {
            number(sheet, row, 3, degrees.value());
        }
    }

    private static void number(SheetBuilder sheet, int row, int column, BigDecimal value) {
        sheet.value(row, column, Expr.of(value), NumberFormat.GENERAL, Look.PLAIN);
    }
}
