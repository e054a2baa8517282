package perkilo.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
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
     * @throws IOException if the file cannot be read
     */
    public Report propose(Path book) throws IOException {
        List<Grid> sheets = Grids.ofBook(book).sheets();
        return ReadingReview.of(Proposals.of(sheets), ReadingSheet.earlier(sheets));
    }
}
