package perkilo.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.costing.CostOutcome;
import perkilo.json.CostJson;
import perkilo.json.Json;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.reading.BookReader;
import perkilo.reading.SharedSources;
import perkilo.report.cost.CostReport;
import perkilo.report.portfolio.PortfolioBook;
import perkilo.xlsx.write.FileAddress;
import perkilo.xlsx.write.Written;

/** Costs one book of a portfolio; whatever is wrong with it becomes a finding, so that the others go on. */
final class PortfolioTask {

    private final SharedSources shared;
    private final SourceOptions sources;
    private final OutputOptions output;
    private final RunOptions runs;
    private final Path summary;
    private final Function<Path, String> names;

    /**
     * Work on the books of one portfolio.
     *
     * @param summary the workbook that links to the results
     * @param names how a person tells the books from each other
     */
    PortfolioTask(
            SharedSources shared,
            SourceOptions sources,
            OutputOptions output,
            RunOptions runs,
            Path summary,
            Function<Path, String> names) {
        this.shared = shared;
        this.sources = sources;
        this.output = output;
        this.runs = runs;
        this.summary = summary;
        this.names = names;
    }

    /**
     * What came of a book.
     *
     * @param book for the summary
     * @param json the answer as {@code --json} gives it for the book alone, with the book's name
     * @param heading the book in the table
     * @param lines its runs in the table
     * @param backup where what stood in the result's place is kept; null where nothing was worth it
     */
    record Result(
            PortfolioBook book,
            ObjectNode json,
            String heading,
            List<List<String>> lines,
            @Nullable Path backup) {

        /** Whether it has costs. */
        boolean isCosted() {
            return book.costs() != null;
        }

        /** The same, without findings that are said elsewhere; the answer of the book alone keeps them. */
        Result without(Set<Finding> others) {
            return new Result(book.without(others), json, heading, lines, backup);
        }
    }

    /** Costs a book and writes its result. */
    Result run(Path book, Path target) {
        List<Finding> findings = new ArrayList<>();
        try {
            CostedBook answer = CostedBook.of(
                    book,
                    new BookReader().read(book, shared, sources.date(), LocalDate.now(ZoneId.systemDefault())),
                    runs);
            findings.addAll(answer.findings());
            CostOutcome.Costed costed = answer.costed();
            return costed == null ? failed(book, findings) : costed(book, target, costed, findings);
        } catch (IOException told) {
            findings.add(Finding.error(Origin.NONE, String.valueOf(told.getMessage())));
        } catch (RuntimeException fault) {
            findings.add(Finding.error(
                    Origin.NONE,
                    "this is a fault in Perkilo, not in your file: " + fault + ". Cost it alone with --debug"));
        }
        return failed(book, findings);
    }

    private Result costed(Path book, Path target, CostOutcome.Costed costed, List<Finding> findings)
            throws IOException {
        Written written = new ResultFile(book, target, output).write(CostReport.of(costed, findings));
        String sheet = written.sheets().getOrDefault("Cost summary", "Cost summary");
        Origin result = new Origin(FileAddress.of(written.file(), summary), sheet, "A1");
        ObjectNode json = Json.object().put("book", book.toString());
        json.setAll(CostJson.of(costed, findings));
        List<List<String>> lines =
                CostTable.lines(costed).stream().map(line -> indented(line)).toList();
        String home = costed.book().settings().home().getCurrencyCode();
        return new Result(
                PortfolioBook.costed(names.apply(book), address(book), result, costed, own(findings)),
                json,
                "%s (%s)".formatted(names.apply(book), home),
                lines,
                written.backup());
    }

    private Result failed(Path book, List<Finding> findings) {
        ObjectNode json = Json.object().put("book", book.toString());
        json.setAll(Json.onlyMessages(findings));
        long errors = findings.stream().filter(Finding::isError).count();
        return new Result(
                PortfolioBook.failed(names.apply(book), address(book), own(findings)),
                json,
                "%s: not costed, %s".formatted(names.apply(book), Console.counted(errors, "error")),
                List.of(),
                null);
    }

    /** What is said of this book, without what is said of the files that all books share. */
    private List<Finding> own(List<Finding> findings) {
        List<Finding> common = shared.findings();
        return findings.stream().filter(finding -> !common.contains(finding)).toList();
    }

    private static List<String> indented(List<String> line) {
        List<String> indented = new ArrayList<>(line);
        indented.set(0, "  " + line.get(0));
        return indented;
    }

    private String address(Path book) {
        return FileAddress.of(book, summary);
    }
}
