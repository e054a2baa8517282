package perkilo.desk;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import perkilo.costing.RunCheck;
import perkilo.model.Book;
import perkilo.origin.Finding;
import perkilo.origin.Reading;
import perkilo.reading.Sources;
import perkilo.swaps.FunctionCheck;
import perkilo.swaps.RecipeCheck;
import perkilo.swaps.RoleCheck;

/** Service that checks a workbook and lists every problem; nothing is changed. */
public final class CheckBook {

    /**
     * Reads everything.
     *
     * @param sources the workbook, and what is read with it
     * @param today the costing date if none is set
     * @throws IOException if a file cannot be read
     */
    public Checked check(Sources sources, LocalDate today, Watch watch) throws IOException {
        return check(BookReading.of(sources, today, watch));
    }

    /** Checks a workbook that has been read before. */
    public Checked check(Reading<Book> reading) {
        Book book = reading.value();
        List<Finding> findings = new ArrayList<>(reading.findings());
        findings.addAll(BookReading.ofDemand(book));
        findings.addAll(RunCheck.of(book));
        findings.addAll(RecipeCheck.of(book));
        findings.addAll(FunctionCheck.of(book));
        findings.addAll(RoleCheck.of(book));
        return new Checked(reading, findings);
    }
}
