package perkilo.cli;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import perkilo.json.SwapJson;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.origin.Finding;
import perkilo.origin.Reading;
import perkilo.purchasing.SearchLimits;
import perkilo.report.Decimals;
import perkilo.report.Report;
import perkilo.report.swap.SwapReport;
import perkilo.swaps.AppliedSwap;
import perkilo.swaps.Cautions;
import perkilo.swaps.Swap;
import perkilo.swaps.SwapFinder;
import perkilo.swaps.SwapOptions;
import perkilo.swaps.SwapOutcome;
import perkilo.swaps.blend.BlendStudy;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.lp.OjalgoSolver;
import perkilo.swaps.money.RunChange;
import perkilo.workbook.write.Written;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Finds cheaper materials that do the same job. */
@Command(
        name = "swap",
        mixinStandardHelpOptions = true,
        description = "Find cheaper materials with an equivalent function: candidates for the bench, not releases.")
final class SwapCommand implements Callable<Integer> {

    /** The table on the terminal shows no more; the workbook and JSON hold all. */
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

    @Option(
            names = "--function",
            paramLabel = "FUNCTION",
            description = "Only for this function, such as emollient or emulsifier.")
    private @Nullable String function;

    @Option(
            names = "--changes",
            paramLabel = "N",
            defaultValue = "2",
            description = "In a blend, at most so many materials come in and as many go out; usually ${DEFAULT-VALUE}.")
    private int changes;

    @Option(
            names = "--apply",
            paramLabel = "N",
            description = "Write the formula with swap number N as a new sheet; the original stays as it is.")
    private @Nullable Integer apply;

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
        List<Finding> findings = new ArrayList<>(reading.findings());
        complaints(book).forEach(findings::add);
        if (findings.stream().anyMatch(Finding::isError)) {
            return console.refuse(findings, Exit.BAD_INPUT);
        }
        SwapOutcome outcome =
                new SwapFinder(Planners.forWhatIfs(), SearchLimits.usual(), new OjalgoSolver()).find(book, wanted());
        findings.addAll(outcome.findings());
        if (outcome instanceof SwapOutcome.Found found) {
            return answer(console, found, findings);
        }
        return console.refuse(findings, Exit.NO_PLAN);
    }

    private void checkUsage() {
        output.checkUsage(spec);
        runs.checkUsage(spec);
        if (changes < 0) {
            throw new ParameterException(spec.commandLine(), "--changes takes zero or more, but was given " + changes);
        }
    }

    private SwapOptions wanted() {
        String glossary = function == null ? null : Functions.named(function);
        return SwapOptions.usual().only(formula, material, glossary).changing(changes);
    }

    private List<Finding> complaints(Book book) {
        List<Finding> complaints = new ArrayList<>();
        if (book.runs().isEmpty()) {
            complaints.add(options.complaint(RunOptions.NONE));
        }
        if (formula != null && book.formula(formula).isEmpty()) {
            complaints.add(options.complaint("there is no formula \"%s\"".formatted(formula)));
        }
        if (material != null && book.material(material).isEmpty()) {
            complaints.add(options.complaint("there is no material \"%s\"".formatted(material)));
        }
        if (function != null && !isKnown(book, Functions.named(function))) {
            complaints.add(options.complaint("no material is known for the function \"%s\". The materials sheet has: %s"
                    .formatted(function, functionsOf(book))));
        }
        return complaints;
    }

    private static boolean isKnown(Book book, String function) {
        return book.materials().values().stream().anyMatch(one -> Functions.does(one, function));
    }

    private static String functionsOf(Book book) {
        return book.materials().values().stream()
                .map(Functions::work)
                .filter(work -> !work.isEmpty())
                .distinct()
                .sorted()
                .collect(Collectors.joining(", "));
    }

    private int answer(Console console, SwapOutcome.Found found, List<Finding> findings) throws IOException {
        Report report = report(found, findings);
        Written written = new ResultFile(options.book(), output, ResultFile.SWAPPED).write(report);
        if (options.json()) {
            console.json(SwapJson.of(found, findings));
        }
        console.table(table(found));
        if (found.swaps().isEmpty()) {
            console.say("No material that fits is cheaper at any run size.");
        }
        studies(found).forEach(console::say);
        Cautions.ALWAYS.forEach(console::say);
        console.findings(findings);
        console.written(written);
        return Exit.DONE;
    }

    private Report report(SwapOutcome.Found found, List<Finding> findings) {
        if (apply == null) {
            return SwapReport.of(found, findings);
        }
        int number = apply;
        Swap swap = SwapFinder.numbered(found, number)
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(),
                        "--apply takes a number from 1 to %d, but was given %d"
                                .formatted(found.swaps().size(), number)));
        Formula applied = AppliedSwap.of(swap, number);
        return SwapReport.of(found, findings, applied);
    }

    private static TextTable table(SwapOutcome.Found found) {
        String home = found.book().settings().home().getCurrencyCode();
        TextTable table = new TextTable(
                "No.", "Formula", "Material", "Candidate", "New level", "Close", "Run", "Per unit, " + home, "Outlay");
        int number = 1;
        for (Swap swap : found.swaps().subList(0, Math.min(SHOWN, found.swaps().size()))) {
            RunChange run = swap.atLargestRun();
            table.row(List.of(
                    Integer.toString(number++),
                    swap.formula().name(),
                    swap.trial().from().name(),
                    swap.trial().to().name(),
                    Decimals.readable(swap.newLevel().movePointRight(2), 3) + " %",
                    Decimals.amount(swap.closeness().score(), 0),
                    run.before().needs().title(),
                    run.unitCost().map(change -> signed(change, 4)).orElse("–"),
                    signed(run.outlay(), 2)));
        }
        return table;
    }

    /** What came of joint swaps, in a sentence each. */
    private static List<String> studies(SwapOutcome.Found found) {
        return found.studies().stream()
                .map(study -> "%s, %s: %s".formatted(study.formula(), study.function(), outcome(study)))
                .toList();
    }

    private static String outcome(BlendStudy study) {
        if (!study.isSought()) {
            return study.refusal();
        }
        return switch (study.blends().size()) {
            case 0 ->
                "none of the blends that cost least at straight-line prices makes a run cheaper; others within the bounds were not costed.";
            case 1 -> "one cheaper blend, on the sheet Blend.";
            default -> study.blends().size() + " cheaper blends, on the sheet Blend.";
        };
    }

    private static String signed(BigDecimal change, int decimals) {
        return (change.signum() > 0 ? "+" : "") + Decimals.amount(change, decimals);
    }
}
