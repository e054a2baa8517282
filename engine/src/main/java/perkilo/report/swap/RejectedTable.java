package perkilo.report.swap;

import java.util.List;
import perkilo.sheet.Look;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Table;
import perkilo.swaps.Rejected;
import perkilo.swaps.SwapOutcome;

/** The table of materials that are not offered, and why; its columns are aligned with those of the table of swaps. */
public final class RejectedTable {

    private static final CandidateColumns<Rejected> LINE =
            new CandidateColumns<>(Rejected::trial, Rejected::closeness, Rejected::verdicts);

    private static final Table<Rejected> TABLE = Table.of(
            empty().width(6),
            LINE.formula(),
            LINE.phase(),
            LINE.material(),
            LINE.role(),
            LINE.level(),
            LINE.candidate(),
            empty().width(9),
            LINE.closeness(),
            LINE.closenessBest(),
            LINE.shares(),
            LINE.gates(),
            Column.<Rejected>of("reason", "Why not")
                    .words(Rejected::reason)
                    .look(Look.HINT)
                    .json());

    private final List<Rejected> rows;

    /** The rejected materials of an answer. */
    public RejectedTable(SwapOutcome.Found found) {
        rows = found.rejected();
    }

    /** An empty column below one that only swaps have. */
    private static Column<Rejected> empty() {
        return Column.of("", "");
    }

    /** The table on a sheet. */
    Placed<Rejected> at(SheetBuilder sheet, int headRow) {
        return TABLE.at(sheet, headRow, rows);
    }

    /** The table for JSON. */
    public Table.Filled<?> inJson() {
        return TABLE.with(rows);
    }
}
