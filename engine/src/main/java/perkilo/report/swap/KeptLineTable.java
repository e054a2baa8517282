package perkilo.report.swap;

import java.util.List;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Table;
import perkilo.swaps.KeptLine;
import perkilo.swaps.SwapOutcome;

/** The table of lines that are not compared, and why; its columns are aligned with those of the table of swaps. */
public final class KeptLineTable {

    private static final Table<KeptLine> TABLE = Table.of(
            Column.of("", ""),
            Column.<KeptLine>of("formula", "Formula")
                    .words(row -> row.formula().name())
                    .json(),
            Column.<KeptLine>of("phase", "Phase")
                    .words(row -> row.portion().line().phase())
                    .json(),
            Column.<KeptLine>of("material", "Material")
                    .words(row -> row.portion().material().name())
                    .link(row -> row.portion().line().origin())
                    .json(),
            Column.<KeptLine>of("role", "Role")
                    .words(row -> row.role().isEmpty() ? TraitColumn.UNKNOWN : row.role())
                    .json(KeptLine::role),
            Column.<KeptLine>of("percent", "Level")
                    .value(row -> row.portion().level())
                    .format(NumberFormat.PERCENT)
                    .json(row -> row.portion().level().movePointRight(2)),
            Column.<KeptLine>of("reason", "Why not compared")
                    .words(KeptLine::why)
                    .look(Look.HINT)
                    .json());

    private final List<KeptLine> rows;

    /** The lines of an answer that are not compared. */
    public KeptLineTable(SwapOutcome.Found found) {
        rows = found.kept();
    }

    /** The table on a sheet. */
    Placed<KeptLine> at(SheetBuilder sheet, int headRow) {
        return TABLE.at(sheet, headRow, rows);
    }

    /** The table for JSON. */
    public Table.Filled<?> inJson() {
        return TABLE.with(rows);
    }
}
