package perkilo.cli;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import perkilo.json.SwapJson;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.origin.Decimals;
import perkilo.origin.Finding;
import perkilo.origin.Reading;
import perkilo.purchasing.SearchLimits;
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
import picocli.CommandLine.Model.OptionSpec;

/** Finds cheaper materials that do the same job. */
final class SwapCommand extends Command {

    /** The table on the terminal shows no more; the workbook and JSON hold all. */
    private static final int SHOWN = 15;

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
    private final OptionSpec apply = Options.value(
            Integer.class,
            "N",
            "Write the formula with swap number N as a new sheet; the original stays as it is.",
            "--apply");
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
        if (book.runs().isEmpty()) {
            complaints.add(options.complaint(RunOptions.NONE));
        }
        if (inFormula != null && book.formula(inFormula).isEmpty()) {
            complaints.add(options.complaint("there is no formula \"%s\"".formatted(inFormula)));
        }
        if (ofMaterial != null && book.material(ofMaterial).isEmpty()) {
            complaints.add(options.complaint("there is no material \"%s\"".formatted(ofMaterial)));
        }
        if (work != null && !isKnown(book, Functions.named(work))) {
            complaints.add(options.complaint("no material is known for the function \"%s\". The materials sheet has: %s"
                    .formatted(work, functionsOf(book))));
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
        Integer number = Options.said(apply, Integer.class);
        if (number == null) {
            return SwapReport.of(found, findings);
        }
        Swap swap = SwapFinder.numbered(found, number)
                .orElseThrow(() -> wrong("--apply takes a number from 1 to %d, but was given %d"
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
