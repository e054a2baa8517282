package perkilo.desk;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import perkilo.costing.RunCheck;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Gaps;
import perkilo.model.Product;
import perkilo.model.Run;
import perkilo.names.Names;
import perkilo.origin.Figure;
import perkilo.origin.Finding;
import perkilo.origin.Origin;

/**
 * Run sizes that replace the Runs sheet; without any, the sheet is used.
 *
 * @param units numbers of units, for every product
 * @param batchKg weights in kilograms, for the bulk of every formula
 */
public record RunSizes(List<BigDecimal> units, List<BigDecimal> batchKg) {

    /** The runs of the Runs sheet. */
    public static final RunSizes OF_THE_BOOK = new RunSizes(List.of(), List.of());

    public RunSizes {
        units = List.copyOf(units);
        batchKg = List.copyOf(batchKg);
    }

    /** Every product at these numbers of units. */
    public static RunSizes ofUnits(long... units) {
        List<BigDecimal> all = new ArrayList<>();
        for (long one : units) {
            all.add(BigDecimal.valueOf(one));
        }
        return new RunSizes(all, List.of());
    }

    /** The book with these runs, or with its own if there are none. */
    Book applyTo(Book book) {
        if (units.isEmpty() && batchKg.isEmpty()) {
            return book;
        }
        List<Run> runs = new ArrayList<>();
        for (Product product : book.products().values()) {
            for (BigDecimal size : units) {
                runs.add(new Run.OfProduct(product.name(), Figure.of(size), Origin.NONE));
            }
        }
        for (Formula formula : book.formulas().values()) {
            for (BigDecimal size : batchKg) {
                runs.add(new Run.OfBulk(formula.name(), Figure.of(size), Origin.NONE));
            }
        }
        Gaps gaps = book.gaps();
        for (Gaps.Gap unread : gaps.of(Gaps.Kind.PRODUCT)) {
            if (book.product(unread.what()).isEmpty()) {
                for (BigDecimal size : units) {
                    runs.add(new Run.OfProduct(unread.what(), Figure.of(size), Origin.NONE));
                }
            }
        }
        for (Gaps.Gap unread : gaps.of(Gaps.Kind.RECIPE)) {
            if (unread.key().equals(Names.key(unread.what()))
                    && book.formula(unread.what()).isEmpty()) {
                for (BigDecimal size : batchKg) {
                    runs.add(new Run.OfBulk(unread.what(), Figure.of(size), Origin.NONE));
                }
            }
        }
        return book.withRuns(runs).withGaps(gaps.without(Gaps.Kind.RUN));
    }

    /** Whether there is no run, not even one that cannot be read. */
    static boolean isNothing(Book book) {
        return book.runs().isEmpty() && !book.gaps().has(Gaps.Kind.RUN);
    }

    /** The reasons why runs of a book cannot be costed; none if all can. */
    static List<Finding> problems(Path file, Book book) {
        return isNothing(book)
                ? List.of(Finding.error(BookReading.whole(file), DeskMessages.noRun()))
                : RunCheck.of(book);
    }
}
