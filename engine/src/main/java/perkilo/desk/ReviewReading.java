package perkilo.desk;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import perkilo.reading.BookReader;
import perkilo.reading.Sources;
import perkilo.reading.arrange.Proposals;
import perkilo.reading.arrange.ReadingSheet;
import perkilo.review.reading.ReadingReview;
import perkilo.sheet.Report;
import perkilo.xlsx.grid.Grid;
import perkilo.xlsx.grid.Grids;

/** Service that proposes how the sheets and columns of a workbook are read, on a sheet for the person to fill in. */
public final class ReviewReading {

    /**
     * What could be on the sheet Reading of a workbook.
     *
     * @param sheets of the workbook
     * @param proposals the rows of the sheet
     */
    public record Proposed(List<Grid> sheets, List<Proposals.Proposal> proposals) {

        public Proposed {
            sheets = List.copyOf(sheets);
            proposals = List.copyOf(proposals);
        }
    }

    /**
     * The rows of the sheet Reading of a workbook, and its sheets.
     *
     * @param sources the workbook, and what is read with it
     * @param today the costing date if none is set
     * @throws IOException if the file cannot be read
     */
    public Proposed rows(Sources sources, LocalDate today) throws IOException {
        List<Grid> sheets = Grids.ofBook(sources.book()).sheets();
        return new Proposed(sheets, Proposals.of(sheets, new BookReader().open(sources, today)));
    }

    /**
     * The sheet Reading of a workbook.
     *
     * @param sources the workbook, and what is read with it
     * @param today the costing date if none is set
     * @throws IOException if the file cannot be read
     */
    public Report propose(Sources sources, LocalDate today) throws IOException {
        return answered(rows(sources, today), Map.of());
    }

    /**
     * The sheet Reading with answers filled in.
     *
     * @param answers by the {@linkplain Proposals.Proposal#id names} of the rows; an empty one takes an answer back.
     *     Rows without one keep what is filled in.
     */
    public Report answered(Proposed proposed, Map<String, String> answers) {
        List<Proposals.Proposal> rows = proposed.proposals().stream()
                .map(row -> row.answered(answers.getOrDefault(row.id(), row.as())))
                .toList();
        return ReadingReview.of(rows, ReadingSheet.earlier(proposed.sheets()));
    }
}
