package perkilo.cli;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import perkilo.costing.CostOutcome;
import perkilo.costing.CostRuns;
import perkilo.costing.RunCost;
import perkilo.json.CostJson;
import perkilo.model.Book;
import perkilo.origin.Finding;
import perkilo.origin.Reading;
import perkilo.purchasing.SearchLimits;
import perkilo.report.Decimals;
import perkilo.report.cost.CostReport;
import perkilo.units.Currencies;
import perkilo.workbook.write.Written;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Costs every run of every product. */
@Command(
        name = "cost",
        mixinStandardHelpOptions = true,
        description = "Cost every run of every product, and write the result sheets into a copy of the workbook.")
final class CostCommand implements Callable<Integer> {

    @Mixin
    private BookOptions options = new BookOptions();

    @Mixin
    private OutputOptions output = new OutputOptions();

    @Mixin
    private RunOptions runs = new RunOptions();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() throws IOException {
        checkUsage();
        Console console = new Console(spec, options);
        Reading<Book> reading = options.read();
        if (reading.hasErrors()) {
            return console.refuse(reading.findings(), Exit.BAD_INPUT);
        }
        Book book = runs.applyTo(reading.value());
        if (book.runs().isEmpty()) {
            List<Finding> findings = new ArrayList<>(reading.findings());
            findings.add(options.complaint(RunOptions.NONE));
            return console.refuse(findings, Exit.BAD_INPUT);
        }
        CostOutcome outcome = new CostRuns(Planners.forRuns(), SearchLimits.usual()).cost(book);
        List<Finding> findings = new ArrayList<>(reading.findings());
        findings.addAll(outcome.findings());
        if (outcome instanceof CostOutcome.Costed costed) {
            return answer(console, costed, findings);
        }
        return console.refuse(findings, Exit.NO_PLAN);
    }

    private void checkUsage() {
        output.checkUsage(spec);
        runs.checkUsage(spec);
    }

    private int answer(Console console, CostOutcome.Costed costed, List<Finding> findings) throws IOException {
        ResultFile file = new ResultFile(options, output, "-costed");
        Written written = file.write(CostReport.of(costed, findings));
        if (options.json()) {
            console.json(CostJson.of(costed, findings));
        }
        console.table(table(costed));
        console.findings(findings);
        console.written(written);
        return Exit.DONE;
    }

    private static TextTable table(CostOutcome.Costed costed) {
        String home = costed.book().settings().home().getCurrencyCode();
        TextTable table = new TextTable(
                "Run", "Bulk per kg", "Unit cost", "Cash per unit", "Outlay", "Stock left", "(all in " + home + ")");
        for (RunCost run : costed.runs()) {
            int minor = Currencies.minorDigits(costed.book().settings().home());
            table.row(List.of(
                    run.needs().title(),
                    Decimals.amount(run.bulkPerKg(), minor),
                    run.unitCost().map(cost -> Decimals.amount(cost, minor)).orElse("–"),
                    run.cashPerUnit().map(cost -> Decimals.amount(cost, minor)).orElse("–"),
                    Decimals.amount(run.outlay(), minor),
                    Decimals.amount(run.stockLeft(), minor),
                    provenOrGap(run)));
        }
        return table;
    }

    private static String provenOrGap(RunCost run) {
        if (run.purchase().proven()) {
            return "";
        }
        BigDecimal gap =
                run.purchase().cost().objective().subtract(run.purchase().bound());
        return "not proven cheapest: gap " + Decimals.amount(gap, 2);
    }
}
