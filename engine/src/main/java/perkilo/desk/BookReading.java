package perkilo.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import perkilo.model.Book;
import perkilo.orderplan.Horizon;
import perkilo.orderplan.LeadTimes;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.origin.Reading;
import perkilo.reading.BookReader;
import perkilo.reading.PricesRead;
import perkilo.reading.Sources;

/** Reads a workbook with its price lists and rates. */
final class BookReading {

    private BookReading() {}

    /** A file as the place of a finding about the file as a whole. */
    static Origin whole(Path file) {
        return new Origin(String.valueOf(file.getFileName()), "", "");
    }

    /** The book and what was found in it. */
    static Reading<Book> of(Sources sources, LocalDate today, Watch watch) throws IOException {
        return of(sources, PricesRead.ALL, today, watch);
    }

    /** The book and what was found in it, with the prices of the items that it names alone. */
    static Reading<Book> ofNamed(Sources sources, LocalDate today, Watch watch) throws IOException {
        return of(sources, PricesRead.OF_NAMED_ITEMS, today, watch);
    }

    private static Reading<Book> of(Sources sources, PricesRead prices, LocalDate today, Watch watch)
            throws IOException {
        watch.at(Stage.READING, 0, 1);
        Reading<Book> reading = new BookReader().read(sources, prices, today);
        watch.at(Stage.READING, 1, 1);
        return reading;
    }

    /** Problems that prevent a plan for a book's demand or make it doubtful; none if the book has no demand. */
    static List<Finding> ofDemand(Book book) {
        if (book.demand().isEmpty()) {
            return List.of();
        }
        List<Finding> findings = new ArrayList<>(Horizon.problems(book));
        findings.addAll(LeadTimes.unknown(book));
        return findings;
    }
}
