package perkilo.desk;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
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
     * The sheet Reading of a workbook.
     *
     * @param sources the workbook, and what is read with it
     * @param today the costing date if none is set
     * @throws IOException if the file cannot be read
     */
    public Report propose(Sources sources, LocalDate today) throws IOException {
        List<Grid> sheets = Grids.ofBook(sources.book()).sheets();
        return ReadingReview.of(
                Proposals.of(sheets, new BookReader().open(sources, today)), ReadingSheet.earlier(sheets));
    }
}
