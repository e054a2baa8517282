package perkilo.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import perkilo.costing.CostOutcome;
import perkilo.json.CostJson;
import perkilo.reading.BookReader;
import perkilo.reading.Sources;
import perkilo.report.cost.CostReport;
import perkilo.xlsx.write.Written;
import picocli.CommandLine.Model.PositionalParamSpec;

/** Costs every run of every product, of one book or of many. */
final class CostCommand extends Command {

    private final PositionalParamSpec books = Options.parameters(
            "1..*", Path.class, "BOOK", "The workbook, .xlsx or .xlsm; or several, or folders of them.");
    private final SourceOptions sources;
    private final PrintOptions printing;
    private final OutputOptions output;
    private final RunOptions runs;

    CostCommand() {
        super(
                "cost",
                "Cost every run of every product, and write the result sheets into a copy of the workbook.",
                "Several workbooks, or a folder of them, are a portfolio: each gets its own result, and a workbook"
                        + " portfolio-costed.xlsx sets them side by side. --out then names a folder. One that has"
                        + " errors does not stop the others; the exit code is 1 at the end.");
        takes(books);
        sources = new SourceOptions(this);
        printing = new PrintOptions(this);
        output = new OutputOptions(this);
        runs = new RunOptions(this);
    }

    @Override
    public Integer call() throws IOException {
        output.checkUsage();
        runs.checkUsage();
        Console console = new Console(this, printing.json(), printing.quiet());
        List<Path> all = Options.allSaid(books, Path.class);
        if (all.size() == 1 && !Files.isDirectory(all.get(0))) {
            return one(console, all.get(0));
        }
        return new Portfolio(all, sources, output, runs).cost(this, console);
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
