package perkilo.cli;

import java.io.IOException;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import perkilo.json.SwapJson;
import perkilo.model.Book;
import perkilo.ordering.CheapestPlan;
import perkilo.origin.Finding;
import perkilo.origin.Reading;
import perkilo.purchasing.SearchLimits;
import perkilo.report.Decimals;
import perkilo.report.swap.SwapReport;
import perkilo.swaps.Swap;
import perkilo.swaps.SwapFinder;
import perkilo.swaps.SwapOptions;
import perkilo.swaps.SwapOutcome;
import perkilo.swaps.lp.OjalgoSolver;
import perkilo.workbook.read.BookReader;
import perkilo.workbook.write.Written;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Finds cheaper materials that do the same job. */
@Command(
        name = "swap",
        mixinStandardHelpOptions = true,
        description = "Find cheaper materials that do the same job: candidates for the bench, never a release.")
final class SwapCommand implements Callable<Integer> {

    private static final int SHOWN = 15;

    @Mixin
    private BookOptions options = new BookOptions();

    @Mixin
    private OutputOptions output = new OutputOptions();

    @Mixin
    private RunOptions runs = new RunOptions();

    @Option(names = "--formula", paramLabel = "NAME", description = "Only in this formula.")
    private @Nullable String formula;

    @Option(names = "--material", paramLabel = "NAME", description = "Only in place of this material.")
    private @Nullable String material;

    @Option(names = "--function", paramLabel = "WORD", description = "Only for lines with this function.")
    private @Nullable String function;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() throws IOException {
        output.checkUsage(spec);
        runs.checkUsage(spec);
        Console console = new Console(spec, options);
        Reading<Book> reading = new BookReader().read(options.sources(), LocalDate.now(ZoneId.systemDefault()));
        if (reading.hasErrors()) {
            return console.refuse(reading.findings(), Exit.BAD_INPUT);
        }
        SwapOutcome outcome = new SwapFinder(
                        new CheapestPlan(), SearchLimits.within(Duration.ofSeconds(5)), new OjalgoSolver())
                .find(runs.applyTo(reading.value()), SwapOptions.usual().only(formula, material, function));
        List<Finding> findings = new ArrayList<>(reading.findings());
        findings.addAll(outcome.findings());
        if (outcome instanceof SwapOutcome.Found found) {
            return answer(console, found, findings);
        }
        return console.refuse(findings, Exit.NO_PLAN);
    }

    private int answer(Console console, SwapOutcome.Found found, List<Finding> findings) throws IOException {
        Written written = new ResultFile(options, output, "-swapped").write(SwapReport.of(found, findings));
        if (options.json()) {
            console.json(SwapJson.of(found, findings));
        }
        console.table(table(found));
        console.say(
                "%d swaps save at some run size; %d candidates are not offered and say why. A swap is a candidate for the bench:"
                        .formatted(found.swaps().size(), found.rejected().size()));
        console.say("test it, and have a qualified safety assessor decide under your local rules.");
        console.findings(findings);
        console.written(written);
        return Exit.DONE;
    }

    private static TextTable table(SwapOutcome.Found found) {
        String home = found.book().settings().home().getCurrencyCode();
        TextTable table = new TextTable(
                "Swap (the first " + SHOWN + ")", "Closeness", "Per kg, " + home, "Per unit at run sizes, " + home);
        found.swaps().stream().limit(SHOWN).forEach(swap -> table.row(row(swap)));
        return table;
    }

    private static List<String> row(Swap swap) {
        String perUnit = swap.runs().stream()
                .map(run -> run.key() + ": "
                        + run.unitCost()
                                .map(change -> Decimals.amount(change, 3))
                                .orElse("–"))
                .collect(Collectors.joining(", "));
        return List.of(
                "%s: %s → %s"
                        .formatted(
                                swap.formula().name(),
                                swap.trial().from().name(),
                                swap.trial().to().name()),
                Decimals.amount(swap.closeness().score(), 0),
                Decimals.amount(swap.runs().get(0).perKg(), 2),
                perUnit);
    }
}
