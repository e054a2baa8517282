package perkilo.report.swap;

import java.util.List;
import perkilo.sheet.Look;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Table;
import perkilo.swaps.MissingFact;
import perkilo.swaps.SwapOutcome;

/**
 * The table of facts without which materials cannot be ranked, and where to type them; its columns are aligned with
 * those of the table of swaps.
 */
public final class MissingFactTable {

    private static final Table<MissingFact> TABLE = Table.of(
            empty(),
            empty(),
            empty(),
            Column.<MissingFact>of("material", "Material")
                    .words(row -> row.material().name())
                    .link(row -> row.material().origin())
                    .json(),
            empty(),
            empty(),
            Column.<MissingFact>of("facts", "What is not known")
                    .words(row -> String.join(", ", row.columns()))
                    .json(MissingFact::columns),
            empty(),
            empty(),
            empty(),
            Column.<MissingFact>of("where", "What to do, and what for")
                    .words(row -> row.where() + " " + String.join(" ", row.neededFor()))
                    .look(Look.HINT)
                    .json(MissingFact::where),
            Column.<MissingFact>of("neededFor", "").notOnSheet().json(MissingFact::neededFor));

    private final List<MissingFact> rows;

    /** The missing facts of an answer. */
    public MissingFactTable(SwapOutcome.Found found) {
        rows = found.missing();
    }

    /** An empty column below one that only swaps have. */
    private static Column<MissingFact> empty() {
        return Column.of("", "");
    }

    /** The table on a sheet. */
    Placed<MissingFact> at(SheetBuilder sheet, int headRow) {
        return TABLE.at(sheet, headRow, rows);
    }

    /** The table for JSON. */
    public Table.Filled<?> inJson() {
        return TABLE.with(rows);
    }
}
