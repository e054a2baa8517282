package perkilo.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import perkilo.json.SwapJson;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.origin.Finding;
import perkilo.origin.Reading;
import perkilo.purchasing.SearchLimits;
import perkilo.report.swap.SwapReport;
import perkilo.sheet.Report;
import perkilo.swaps.AppliedSwap;
import perkilo.swaps.FunctionCheck;
import perkilo.swaps.RecipeCheck;
import perkilo.swaps.SwapFinder;
import perkilo.swaps.SwapOptions;
import perkilo.swaps.SwapOutcome;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.lp.OjalgoSolver;
import perkilo.xlsx.write.Written;
import picocli.CommandLine.Model.OptionSpec;

/** Finds cheaper materials that do the same job. */
final class SwapCommand extends Command {

    private final OptionSpec formula = Options.value(String.class, "NAME", "Only in this formula.", "--formula");
    private final OptionSpec material =
            Options.value(String.class, "NAME", "Only in place of this material.", "--material");
    private final OptionSpec function = Options.value(
            String.class, "FUNCTION", "Only for this function, such as emollient or emulsifier.", "--function");
    private final OptionSpec changes = Options.valueOr(
            "2",
            int.class,
            "N",
            "In a blend, at most so many materials come in and as many go out; usually ${DEFAULT-VALUE}.",
            "--changes");
    private final OptionSpec apply = Options.valueBuilder(
                    Choice.class,
                    "N | blend N",
                    "Write the formula with swap number N, or with blend number N, as a new sheet that is ready to cost;"
                            + " the original stays as it is.",
                    "--apply")
            .parameterConsumer(new Choice.Words())
            .build();
    private final BookOptions options;
    private final OutputOptions output;
    private final RunOptions runs;

    SwapCommand() {
        super("swap", "Find cheaper materials with an equivalent function: candidates for the bench, not releases.");
        options = new BookOptions(this);
        output = new OutputOptions(this);
        runs = new RunOptions(this);
        takes(formula, material, function, changes, apply);
    }

    @Override
    public Integer call() throws IOException {
        checkUsage();
        Console console = new Console(this, options);
        Reading<Book> reading = options.read();
        if (reading.hasErrors()) {
            return console.refuse(reading.findings(), Exit.BAD_INPUT);
        }
        Book book = runs.applyTo(reading.value());
        List<Finding> findings = new ArrayList<>(reading.findings());
        complaints(book).forEach(findings::add);
        findings.addAll(RunOptions.problems(options.book(), book));
        if (findings.stream().anyMatch(Finding::isError)) {
            return console.refuse(findings, Exit.BAD_INPUT);
        }
        SwapOutcome outcome =
                new SwapFinder(Planners.forWhatIfs(), SearchLimits.usual(), new OjalgoSolver()).find(book, wanted());
        findings.addAll(outcome.findings());
        findings.addAll(RecipeCheck.of(book));
        findings.addAll(FunctionCheck.of(book));
        if (outcome instanceof SwapOutcome.Found found) {
            return answer(console, found, findings);
        }
        return console.refuse(findings, Exit.NO_PLAN);
    }

    private void checkUsage() {
        output.checkUsage();
        runs.checkUsage();
        int most = changes();
        if (most < 0) {
            throw wrong("--changes takes zero or more, but was given " + most);
        }
    }

    private int changes() {
        return changes.<Integer>getValue();
    }

    private SwapOptions wanted() {
        String work = said(function);
        String glossary = work == null ? null : Functions.named(work);
        return SwapOptions.usual().only(said(formula), said(material), glossary).changing(changes());
    }

    private static @Nullable String said(OptionSpec option) {
        return Options.said(option, String.class);
    }

    private List<Finding> complaints(Book book) {
        String inFormula = said(formula);
        String ofMaterial = said(material);
        String work = said(function);
        List<Finding> complaints = new ArrayList<>();
        if (inFormula != null && book.formula(inFormula).isEmpty()) {
            complaints.add(options.complaint("there is no formula \"%s\"".formatted(inFormula)));
        }
        if (ofMaterial != null && book.material(ofMaterial).isEmpty()) {
            complaints.add(options.complaint(
                    "there is no material \"%s\"%s".formatted(ofMaterial, withInci(book, ofMaterial))));
        }
        if (work != null && !isKnown(book, Functions.named(work))) {
            complaints.add(options.complaint("no material is known for the function \"%s\". The materials sheet has: %s"
                    .formatted(work, functionsOf(book))));
        }
        return complaints;
    }

    /** Which materials have a name in the ingredient list, as people know that one as well. */
    private static String withInci(Book book, String inci) {
        String names = book.materials().values().stream()
                .filter(one -> !one.inci().isEmpty() && Names.key(one.inci()).equals(Names.key(inci)))
                .map(Material::name)
                .collect(Collectors.joining(", "));
        return names.isEmpty() ? "" : "; that is the INCI name of " + names;
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
        Optional<AppliedSwap> applied =
                Optional.ofNullable(Options.said(apply, Choice.class)).map(choice -> choice.applyTo(found, this));
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
