package perkilo.report.swap;

import java.util.List;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Table;
import perkilo.swaps.SwapOutcome;
import perkilo.swaps.blend.BlendStudy;

/** The table of studies, for JSON: for which materials blends were sought, and the outcome. */
public final class StudyTable {

    private static final Table<BlendStudy> TABLE = Table.of(
            Column.<BlendStudy>of("formula", "").json(BlendStudy::formula),
            Column.<BlendStudy>of("phase", "").json(BlendStudy::phase),
            Column.<BlendStudy>of("function", "").json(BlendStudy::function),
            Column.<BlendStudy>of("refusal", "").json(BlendStudy::refusal),
            Column.<BlendStudy>of("blends", "").json(study -> study.blends().size()),
            Column.<BlendStudy>of("kept", "").json(BlendStudy::kept),
            Column.<BlendStudy>of("leftOut", "").json(BlendStudy::leftOut),
            Column.<BlendStudy>of("notOffered", "").json(BlendStudy::notOffered));

    private final List<BlendStudy> rows;

    /** The studies of an answer. */
    public StudyTable(SwapOutcome.Found found) {
        rows = found.studies();
    }

    /** The table for JSON. */
    public Table.Filled<?> inJson() {
        return TABLE.with(rows);
    }
}
