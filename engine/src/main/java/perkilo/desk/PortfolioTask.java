package perkilo.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import perkilo.model.Book;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.origin.Reading;
import perkilo.origin.SameCause;
import perkilo.reading.BookReader;
import perkilo.reading.PricesRead;
import perkilo.reading.SharedSources;
import perkilo.report.portfolio.PortfolioBook;
import perkilo.xlsx.parts.FileStamp;
import perkilo.xlsx.write.FileAddress;
import perkilo.xlsx.write.Written;

/** Costs one book of a portfolio. Any failure becomes a finding, so that the other books are still costed. */
final class PortfolioTask<T> {

    private final PortfolioRequest request;
    private final SharedSources shared;
    private final Path summary;
    private final Function<Path, String> names;
    private final BookView<T> view;
    private final Watch watch;

    /**
     * Work on the books of one portfolio.
     *
     * @param shared what all books use
     * @param view what the caller keeps of each book's costs
     * @param watch only asked whether to stop; the books are counted elsewhere
     */
    PortfolioTask(
            PortfolioRequest request, SharedSources shared, PortfolioPlaces places, BookView<T> view, Watch watch) {
        this.request = request;
        this.shared = shared;
        this.summary = places.summary();
        this.names = places.names();
        this.view = view;
        this.watch = new OnlyCancelled(watch);
    }

    /** Costs a book and writes its result. */
    CostedBook<T> run(Path book, Path target) {
        List<Finding> findings = new ArrayList<>();
        if (watch.isCancelled()) {
            findings.add(Finding.error(Origin.NONE, DeskMessages.stopped()));
            return failed(book, findings, false);
        }
        try {
            FileStamp read = FileStamp.of(book);
            Reading<Book> reading =
                    new BookReader().read(book, shared, PricesRead.OF_NAMED_ITEMS, request.date(), request.today());
            CostAnswer answer = new CostBook().cost(book, reading, request.sizes(), watch);
            findings.addAll(answer.findings());
            return answer instanceof CostAnswer.Costed costed
                    ? costed(read, target, costed)
                    : failed(book, findings, false);
        } catch (IOException told) {
            findings.add(Finding.error(Origin.NONE, String.valueOf(told.getMessage())));
        } catch (UncheckedIOException told) {
            Throwable cause = told.getCause();
            findings.add(
                    Finding.error(Origin.NONE, String.valueOf(cause == null ? told.getMessage() : cause.getMessage())));
        } catch (RuntimeException | AssertionError | StackOverflowError fault) {
            findings.add(Finding.error(Origin.NONE, DeskMessages.fault(fault.toString())));
            return failed(book, findings, true);
        }
        return failed(book, findings, false);
    }

    private CostedBook<T> costed(FileStamp read, Path target, CostAnswer.Costed costed) throws IOException {
        Path book = read.file();
        Written written = request.destination().writeTo(target, read, costed.report(), request.today());
        String sheet = written.sheets().getOrDefault("Cost summary", "Cost summary");
        Origin result = new Origin(FileAddress.of(written.file(), summary), sheet, "A1");
        PortfolioBook shown =
                PortfolioBook.costed(names.apply(book), address(book), result, costed.costed(), own(costed.findings()));
        return new CostedBook<>(book, shown, costed.findings(), view.of(book, costed), written.backup(), false);
    }

    private CostedBook<T> failed(Path book, List<Finding> findings, boolean isFaulty) {
        PortfolioBook shown = PortfolioBook.failed(names.apply(book), address(book), own(findings));
        return new CostedBook<>(book, shown, findings, null, null, isFaulty);
    }

    /** The findings about this book, without those about shared files. */
    private List<Finding> own(List<Finding> findings) {
        Set<Finding> common = new HashSet<>(shared.findings());
        common.addAll(SameCause.once(shared.findings()));
        return findings.stream().filter(finding -> !common.contains(finding)).toList();
    }

    private String address(Path book) {
        return FileAddress.of(book, summary);
    }

    /** A watch without progress. */
    private record OnlyCancelled(Watch watch) implements Watch {

        @Override
        public void at(Stage stage, int done, int of) {}

        @Override
        public boolean isCancelled() {
            return watch.isCancelled();
        }
    }
}
