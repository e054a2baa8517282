package perkilo.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import perkilo.origin.Finding;
import perkilo.reading.SharedSources;
import perkilo.report.portfolio.PortfolioBook;
import perkilo.report.portfolio.PortfolioReport;
import perkilo.sheet.Report;
import perkilo.xlsx.write.WorkbookWriter;
import perkilo.xlsx.write.Written;

/** Service that costs many books at once, each by itself, writes their results, and compares them in a summary. */
public final class CostPortfolio {

    /**
     * Costs all books.
     *
     * @param view what the caller keeps of each book's costs
     * @throws IOException if the shared files cannot be read or the summary cannot be written; a book that cannot be
     *     read is an error of that book
     */
    public <T> PortfolioAnswer<T> cost(PortfolioRequest request, BookView<T> view, Watch watch) throws IOException {
        List<Path> books = BookFolder.expand(request.named());
        Path folder = request.destination().out();
        if (folder != null && PortfolioPlaces.isNoFolder(folder)) {
            return new PortfolioAnswer.NoFolder<>(folder);
        }
        PortfolioAnswer.SamePlace<T> clash = PortfolioPlaces.clash(request.destination(), books);
        if (clash != null) {
            return clash;
        }
        SharedSources shared = SharedSources.read(request.prices(), request.rates());
        if (shared.findings().stream().anyMatch(Finding::isError)) {
            return new PortfolioAnswer.BadInput<>(shared.findings());
        }
        if (folder != null) {
            Files.createDirectories(folder);
        }
        PortfolioPlaces places = PortfolioPlaces.of(request.destination(), request.named(), books);
        PortfolioTask<T> task = new PortfolioTask<>(request, shared, places, view, watch);
        return done(all(task, places.targets(), watch), shared, places.summary());
    }

    private static <T> PortfolioAnswer<T> done(List<CostedBook<T>> each, SharedSources shared, Path summary)
            throws IOException {
        Set<Finding> repeated = repeated(each, shared);
        List<CostedBook<T>> books = new ArrayList<>();
        for (CostedBook<T> book : each) {
            books.add(book.without(repeated));
        }
        List<Finding> common = new ArrayList<>(shared.findings());
        common.addAll(repeated);
        return new PortfolioAnswer.Done<>(books, common, write(summary, books, common));
    }

    /** Findings about a shared price list that occur in several books; errors stay with each book. */
    private static <T> Set<Finding> repeated(List<CostedBook<T>> books, SharedSources shared) {
        Set<Finding> seen = new HashSet<>();
        Set<Finding> repeated = new LinkedHashSet<>();
        for (CostedBook<T> book : books) {
            for (Finding finding : new LinkedHashSet<>(book.shown().findings())) {
                if (!finding.isError() && shared.holds(finding.origin()) && !seen.add(finding)) {
                    repeated.add(finding);
                }
            }
        }
        return repeated;
    }

    private static <T> List<CostedBook<T>> all(PortfolioTask<T> task, Map<Path, Path> targets, Watch watch) {
        Watched progress = new Watched(watch, Stage.BOOKS, targets.size());
        ExecutorService threads =
                Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
        try {
            List<Future<CostedBook<T>>> pending = new ArrayList<>();
            targets.forEach((book, target) -> pending.add(threads.submit(() -> {
                CostedBook<T> costed = task.run(book, target);
                progress.step();
                return costed;
            })));
            List<CostedBook<T>> all = new ArrayList<>();
            for (Future<CostedBook<T>> one : pending) {
                all.add(one.get());
            }
            return all;
        } catch (ExecutionException failed) {
            if (failed.getCause() instanceof Error error) {
                throw error; // such as too little memory, which concerns all books
            }
            throw new IllegalStateException(failed.getCause());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("stopped", stopped);
        } finally {
            threads.shutdownNow();
        }
    }

    private static <T> Written write(Path summary, List<CostedBook<T>> books, List<Finding> shared) throws IOException {
        Report report = PortfolioReport.of(books.stream().map(CostedBook::shown).toList(), shared);
        Set<String> files = new LinkedHashSet<>();
        for (CostedBook<T> book : books) {
            PortfolioBook shown = book.shown();
            files.add(shown.address());
            if (shown.result() != null) {
                files.add(shown.result().file());
            }
        }
        return new WorkbookWriter().writeAlone(report, summary, null, files);
    }
}
