package perkilo.review.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import perkilo.reading.arrange.Proposals;
import perkilo.reading.arrange.ReadingSheet;
import perkilo.review.ChoiceLists;
import perkilo.sheet.Look;
import perkilo.sheet.Report;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Table;

/** Makes the sheet Reading: one row for each sheet, each header, and each question of a workbook. */
public final class ReadingReview {

    private static final int HEAD_ROW = 4;

    private ReadingReview() {}

    /**
     * The sheet with its lists of answers, to be written into a person's workbook.
     *
     * @param earlier the name of the sheet of this kind in the workbook, whose place it takes; empty for none
     */
    public static Report of(List<Proposals.Proposal> proposals, Optional<String> earlier) {
        ChoiceLists lists = new ChoiceLists();
        String name = earlier.orElse(ReadingSheet.NAME);
        SheetBuilder sheet = new SheetBuilder(name)
                .landscape()
                .title(0, "How this workbook is read")
                .hint(
                        1,
                        "Fill in the yellow cells where something is wrong or missing, save, and run any command on this"
                                + " workbook. A blank cell changes nothing; \"ignore\" leaves the column or sheet out.")
                .hint(
                        2,
                        "The lists offer the columns of the table that a sheet looks like. For another table, choose it"
                                + " first, save, and run perkilo check --review again.");
        new Table<>(columns(lists)).at(sheet, HEAD_ROW, proposals).write().filter();
        List<ResultSheet> sheets = new ArrayList<>();
        sheets.add(sheet.freeze(HEAD_ROW + 1, 0).build());
        lists.sheet().ifPresent(sheets::add);
        return new Report(sheets, Set.of(name), earlier.map(Set::of).orElse(Set.of()), Map.of(), null);
    }

    private static List<Column<Proposals.Proposal>> columns(ChoiceLists lists) {
        return List.of(
                Column.<Proposals.Proposal>of("sheet", ReadingSheet.SHEET)
                        .words(row -> row.where().sheet())
                        .look(Look.LABEL)
                        .width(22),
                Column.<Proposals.Proposal>of("cell", ReadingSheet.CELL)
                        .words(row -> row.where().cell())
                        .width(8),
                Column.<Proposals.Proposal>of("there", ReadingSheet.THERE)
                        .words(Proposals.Proposal::there)
                        .width(30),
                Column.<Proposals.Proposal>of("recognised", "Recognised as")
                        .words(Proposals.Proposal::recognised)
                        .width(20),
                Column.<Proposals.Proposal>of("looksLike", ReadingSheet.LOOKS_LIKE)
                        .words(Proposals.Proposal::looksLike)
                        .look(Look.HINT)
                        .width(30),
                Column.<Proposals.Proposal>of("as", ReadingSheet.READ_AS)
                        .words(Proposals.Proposal::as)
                        .fillIn(row -> lists.of(row.choices()))
                        .width(24));
    }
}
