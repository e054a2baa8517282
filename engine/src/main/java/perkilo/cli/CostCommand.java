package perkilo.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.Callable;
import perkilo.costing.CostOutcome;
import perkilo.json.CostJson;
import perkilo.report.cost.CostReport;
import perkilo.workbook.read.BookReader;
import perkilo.workbook.read.Sources;
import perkilo.workbook.write.Written;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Costs every run of every product, of one book or of many. */
@Command(
        name = "cost",
        mixinStandardHelpOptions = true,
        description = {
            "Cost every run of every product, and write the result sheets into a copy of the workbook.",
            "Several workbooks, or a folder of them, are a portfolio: each gets its own result, and a workbook"
                    + " portfolio-costed.xlsx sets them side by side. --out then names a folder. One that has errors"
                    + " does not stop the others; the exit code is 1 at the end."
        })
final class CostCommand implements Callable<Integer> {

    @Parameters(
            arity = "1..*",
            paramLabel = "BOOK",
            description = "The workbook, .xlsx or .xlsm; or several, or folders of them.")
    private List<Path> books = List.of();

    @Mixin
    private SourceOptions sources = new SourceOptions();

    @Mixin
    private PrintOptions printing = new PrintOptions();

    @Mixin
    private OutputOptions output = new OutputOptions();

    @Mixin
    private RunOptions runs = new RunOptions();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() throws IOException {
        output.checkUsage(spec);
        runs.checkUsage(spec);
        Console console = new Console(spec, printing.json(), printing.quiet());
        if (books.size() == 1 && !Files.isDirectory(books.get(0))) {
            return one(console, books.get(0));
        }
        return new Portfolio(books, sources, output, runs).cost(spec, console);
    }

    private int one(Console console, Path book) throws IOException {
        Sources all = new Sources(book, sources.prices(), sources.rates(), sources.date());
        LocalDate today = LocalDate.now(ZoneId.systemDefault());
        CostedBook answer = CostedBook.of(book, new BookReader().read(all, today), runs);
        CostOutcome.Costed costed = answer.costed();
        if (costed == null) {
            return console.refuse(answer.findings(), answer.exit());
        }
        ResultFile file = new ResultFile(book, output, ResultFile.COSTED);
        Written written = file.write(CostReport.of(costed, answer.findings()));
        if (printing.json()) {
            console.json(CostJson.of(costed, answer.findings()));
        }
        console.table(CostTable.of(costed));
        console.findings(answer.findings());
        console.written(written);
        return Exit.DONE;
    }
}
