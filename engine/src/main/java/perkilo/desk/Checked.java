package perkilo.desk;

import java.util.List;
import perkilo.model.Book;
import perkilo.origin.Finding;
import perkilo.origin.Level;
import perkilo.origin.Reading;
import perkilo.origin.SameCause;

/**
 * The result of checking a workbook.
 *
 * @param reading the book, to be used only if the reading has no error
 * @param findings everything that a person should know, also from the reading
 */
public record Checked(Reading<Book> reading, List<Finding> findings) {

    public Checked {
        findings = SameCause.once(findings);
    }

    /** What was read. */
    public Book book() {
        return reading.value();
    }

    /** How many findings of a level there are. */
    public long count(Level level) {
        return findings.stream().filter(finding -> finding.level() == level).count();
    }

    /** Whether there is an error. */
    public boolean hasErrors() {
        return count(Level.ERROR) > 0;
    }
}
