package perkilo.reading;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import perkilo.model.ScenarioLine;
import perkilo.origin.Decimals;
import perkilo.reading.table.Findings;
import perkilo.reading.table.TableRow;
import perkilo.schema.ScenariosSheet;
import perkilo.xlsx.grid.Cell;

/** Reads the what-ifs that are costed beside today. */
final class ScenarioRows {

    private final Tables tables;
    private final Findings findings;

    ScenarioRows(Tables tables, Findings findings) {
        this.tables = tables;
        this.findings = findings;
    }

    /** The changes, row by row. */
    List<ScenarioLine> lines() {
        List<ScenarioLine> lines = new ArrayList<>();
        for (TableRow row : tables.rows(ScenariosSheet.SCHEMA, findings)) {
            if (row.require(ScenariosSheet.CHANGE)) {
                String what = row.text(ScenariosSheet.WHAT);
                String change = change(row);
                String name = row.isBlank(ScenariosSheet.NAME) ? what + " " + change : row.text(ScenariosSheet.NAME);
                lines.add(new ScenarioLine(
                        name, what, change, row.origin(ScenariosSheet.WHAT), row.origin(ScenariosSheet.CHANGE)));
            }
        }
        return lines;
    }

    /** What the cell shows: a number in a percent format is a change in per cent. */
    private static String change(TableRow row) {
        Cell cell = row.cell(ScenariosSheet.CHANGE);
        BigDecimal number = cell.number();
        if (number == null || !cell.isPercentFormat()) {
            return row.text(ScenariosSheet.CHANGE);
        }
        return (number.signum() < 0 ? "" : "+") + Decimals.plain(number.movePointRight(2)) + " %";
    }
}
