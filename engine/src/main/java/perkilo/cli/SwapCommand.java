package perkilo.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import perkilo.json.SwapJson;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.origin.Finding;
import perkilo.origin.Reading;
import perkilo.purchasing.SearchLimits;
import perkilo.report.Report;
import perkilo.report.swap.SwapReport;
import perkilo.swaps.AppliedSwap;
import perkilo.swaps.SwapFinder;
import perkilo.swaps.SwapOptions;
import perkilo.swaps.SwapOutcome;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.lp.OjalgoSolver;
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
            paramLabel = "N | blend N",
            parameterConsumer = Choice.Words.class,
            description =
                    "Write the formula with swap number N, or with blend number N, as a new sheet that is ready to"
                            + " cost; the original stays as it is.")
    private @Nullable Choice apply;

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
        Optional<AppliedSwap> applied = Optional.ofNullable(apply).map(choice -> choice.applyTo(found, spec));
        applied.ifPresent(one -> findings.addAll(one.notes()));
        Optional<Formula> added = applied.map(AppliedSwap::formula);
        Report report = SwapReport.of(found, findings, added);
        Written written = new ResultFile(options.book(), output, ResultFile.SWAPPED).write(report);
        if (options.json()) {
            console.json(SwapJson.of(found, findings, added));
        }
        new SwapWords(found).say(console);
        added.ifPresent(formula -> console.say("New formula: \"%s\"".formatted(formula.name())));
        console.findings(findings);
        console.written(written);
        return Exit.DONE;
    }
}
