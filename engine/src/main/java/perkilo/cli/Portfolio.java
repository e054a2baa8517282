package perkilo.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.json.Json;
import perkilo.origin.Finding;
import perkilo.reading.SharedSources;
import perkilo.report.portfolio.PortfolioBook;
import perkilo.report.portfolio.PortfolioReport;
import perkilo.sheet.Report;
import perkilo.xlsx.write.WorkbookWriter;
import perkilo.xlsx.write.Written;

/** Costs many books at once, each for itself, and sets them side by side. */
final class Portfolio {

    private static final String SUMMARY = "portfolio";

    private final List<Path> named;
    private final SourceOptions sources;
    private final OutputOptions output;
    private final RunOptions runs;

    /**
     * A portfolio.
     *
     * @param named workbooks, and folders of them
     */
    Portfolio(List<Path> named, SourceOptions sources, OutputOptions output, RunOptions runs) {
        this.named = named;
        this.sources = sources;
        this.output = output;
        this.runs = runs;
    }

    /** Costs all books, writes their results and the summary, and prints; the exit code. */
    int cost(Command command, Console console) throws IOException {
        List<Path> books = BookFolder.expand(named);
        Path folder = folder(command);
        Map<Path, Path> targets = targets(command, folder, books);
        Path summary = summary(folder, targets);
        SharedSources shared = SharedSources.read(sources.prices(), sources.rates());
        if (shared.findings().stream().anyMatch(Finding::isError)) {
            return console.refuse(shared.findings(), Exit.BAD_INPUT);
        }
        if (folder != null) {
            Files.createDirectories(folder);
        }
        PortfolioTask task = new PortfolioTask(shared, sources, output, runs, summary, names(books));
        List<PortfolioTask.Result> each = all(command, task, targets);
        Set<Finding> repeated = repeated(each, shared);
        List<PortfolioTask.Result> results =
                each.stream().map(result -> result.without(repeated)).toList();
        List<Finding> common = new ArrayList<>(shared.findings());
        common.addAll(repeated);
        Written written = write(summary, results, common);
        console.findings(common);
        print(console, results);
        console.written(written);
        return results.stream().allMatch(PortfolioTask.Result::isCosted) ? Exit.DONE : Exit.BAD_INPUT;
    }

    /** What several books say of the same row of a price list that they share; an error stays with each of them. */
    private static Set<Finding> repeated(List<PortfolioTask.Result> results, SharedSources shared) {
        Set<Finding> seen = new HashSet<>();
        Set<Finding> repeated = new LinkedHashSet<>();
        for (PortfolioTask.Result result : results) {
            for (Finding finding : new LinkedHashSet<>(result.book().findings())) {
                if (!finding.isError() && shared.holds(finding.origin()) && !seen.add(finding)) {
                    repeated.add(finding);
                }
            }
        }
        return repeated;
    }

    /** Books of one folder are told by their names alone, others by their places too. */
    private static Function<Path, String> names(List<Path> books) {
        Set<Path> folders = new HashSet<>();
        books.forEach(book -> folders.add(book.toAbsolutePath().normalize().resolveSibling("x")));
        return folders.size() == 1
                ? book -> String.valueOf(book.getFileName())
                : book -> book.normalize().toString();
    }

    private @Nullable Path folder(Command command) {
        Path out = output.out();
        if (out == null) {
            return null;
        }
        String name = out.toString().toLowerCase(Locale.ROOT);
        boolean workbook = name.endsWith(".xlsx") || name.endsWith(".xlsm");
        if (Files.isRegularFile(out) || (workbook && !Files.isDirectory(out))) {
            throw command.wrong(
                    "with several books or a folder, --out names the folder for the results, but was given " + out);
        }
        return out;
    }

    /** Where the result of each book goes; no two may go to the same place. */
    private Map<Path, Path> targets(Command command, @Nullable Path folder, List<Path> books) {
        Map<Path, Path> targets = new LinkedHashMap<>();
        Map<Path, Path> taken = new LinkedHashMap<>();
        for (Path book : books) {
            Path target = output.targetIn(folder, book, ResultFile.COSTED);
            Path other = taken.putIfAbsent(target.toAbsolutePath().normalize(), book);
            if (other != null) {
                throw command.wrong(
                        "the results of %s and %s would both be written to %s; rename one of them, or cost them apart"
                                .formatted(other, book, target));
            }
            targets.put(book, target);
        }
        return targets;
    }

    private Path summary(@Nullable Path folder, Map<Path, Path> targets) {
        Path first = named.get(0);
        Path beside = Files.isDirectory(first) ? first : first.toAbsolutePath().getParent();
        Path place = Objects.requireNonNullElse(folder == null ? beside : folder, Path.of(""));
        Set<Path> taken = new HashSet<>();
        targets.forEach((book, target) -> taken.add(target.toAbsolutePath().normalize()));
        Path summary = place.resolve(SUMMARY + ResultFile.COSTED + ".xlsx");
        for (int number = 2; taken.contains(summary.toAbsolutePath().normalize()); number++) {
            summary = place.resolve(SUMMARY + "-" + number + ResultFile.COSTED + ".xlsx");
        }
        return Files.isDirectory(first) || folder != null ? summary : shortest(first, summary);
    }

    /** As a person would type it, where the first book was typed without its folder. */
    private static Path shortest(Path first, Path summary) {
        return first.isAbsolute() ? summary : first.resolveSibling(summary.getFileName());
    }

    private static List<PortfolioTask.Result> all(Command command, PortfolioTask task, Map<Path, Path> targets) {
        Progress progress =
                new Progress(command.spec().commandLine().getErr(), Progress.onTerminal(), targets.size() + " books");
        ExecutorService threads =
                Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
        try {
            List<Future<PortfolioTask.Result>> pending = new ArrayList<>();
            targets.forEach((book, target) -> pending.add(threads.submit(() -> {
                PortfolioTask.Result result = task.run(book, target);
                progress.step();
                return result;
            })));
            List<PortfolioTask.Result> results = new ArrayList<>();
            for (Future<PortfolioTask.Result> one : pending) {
                results.add(one.get());
            }
            return results;
        } catch (ExecutionException fault) {
            throw new IllegalStateException(fault.getCause());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("stopped", stopped);
        } finally {
            threads.shutdownNow();
            progress.end();
        }
    }

    private static Written write(Path summary, List<PortfolioTask.Result> results, List<Finding> shared)
            throws IOException {
        Report report = PortfolioReport.of(
                results.stream().map(PortfolioTask.Result::book).toList(), shared);
        Set<String> files = new LinkedHashSet<>();
        for (PortfolioTask.Result result : results) {
            PortfolioBook book = result.book();
            files.add(book.address());
            if (book.result() != null) {
                files.add(book.result().file());
            }
        }
        return new WorkbookWriter().writeAlone(report, summary, files);
    }

    private static void print(Console console, List<PortfolioTask.Result> results) {
        TextTable table = CostTable.ofSeveral();
        for (PortfolioTask.Result result : results) {
            table.row(List.of(result.heading(), "", "", "", "", "", ""));
            result.lines().forEach(table::row);
        }
        console.answers(Json.array(results, PortfolioTask.Result::json));
        console.table(table);
        for (PortfolioTask.Result result : results) {
            console.findingsOf(result.book().name(), result.book().findings());
            console.kept("the result of " + result.book().name(), result.backup());
        }
    }
}
