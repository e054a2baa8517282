package perkilo.cli;

import java.io.IOException;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import perkilo.desk.Choice;
import perkilo.desk.Destination;
import perkilo.desk.FindSwaps;
import perkilo.desk.SwapAnswer;
import perkilo.desk.SwapRequest;
import perkilo.json.SwapJson;
import perkilo.xlsx.parts.FileStamp;
import perkilo.xlsx.write.Written;
import picocli.CommandLine.Model.OptionSpec;

/** The command {@code swap}: finds cheaper materials that do the same job. */
final class SwapCommand extends Command {

    /** The smallest trial batch that can be asked for. */
    private static final BigDecimal LEAST_GRAMS = BigDecimal.ONE;

    private static final BigDecimal MOST_CLOSE = BigDecimal.valueOf(100);

    private final OptionSpec formula = Options.value(String.class, "NAME", "Only look at this formula.", "--formula");
    private final OptionSpec material =
            Options.value(String.class, "NAME", "Only replace this material.", "--material");
    private final OptionSpec function = Options.value(
            String.class,
            "FUNCTION",
            "Only look at lines with this function or role, such as emollient or emollient ester.",
            "--function");
    private final OptionSpec closeness = Options.valueOr(
            "60",
            BigDecimal.class,
            "N",
            "Only offer materials that are at least this close, 0 to 100, even if every unknown fact is as far as can be."
                    + " Default: ${DEFAULT-VALUE}.",
            "--closeness");
    private final OptionSpec actives = Options.flag(
            "Also look for another supplier or strength of actives, UV filters, fragrances and colourants, which are kept"
                    + " otherwise.",
            "--actives");
    private final OptionSpec anyHlb = Options.flag(
            "Also offer swaps with which the HLB of the emulsifiers is more than 1.5 from what the oils require.",
            "--any-hlb");
    private final OptionSpec changes = Options.valueOr(
            "2",
            int.class,
            "N",
            "In a blend, add at most N materials and take out at most N. Default: ${DEFAULT-VALUE}.",
            "--changes");
    private final OptionSpec apply = Options.valueBuilder(
                    Choice.class,
                    "N | blend N",
                    "Write the formula with swap number N, or with blend number N, as a new sheet that is ready to cost."
                            + " The original is not changed.",
                    "--apply")
            .parameterConsumer(new ChoiceWords())
            .build();
    private final OptionSpec bench = Options.value(
            BigDecimal.class,
            "GRAMS",
            "Write a sheet to weigh a trial batch of so many grams from: of the new formula with --apply, otherwise of each"
                    + " formula as it is.",
            "--bench");
    private final BookOptions options;
    private final OutputOptions output;
    private final RunOptions runs;

    SwapCommand() {
        super(
                "swap",
                "Find cheaper materials that can play the same role. They are candidates for lab tests, not approved changes.");
        options = new BookOptions(this);
        output = new OutputOptions(this);
        runs = new RunOptions(this);
        takes(formula, material, function, closeness, actives, anyHlb, changes, apply, bench);
    }

    @Override
    public Integer call() throws IOException {
        checkUsage();
        Console console = new Console(this, options);
        FileStamp book = FileStamp.of(options.book());
        SwapAnswer answer;
        try (Progress progress = console.progress()) {
            answer = new FindSwaps().find(request(), progress);
        }
        if (answer instanceof SwapAnswer.Found found) {
            return said(console, book, found);
        }
        if (answer instanceof SwapAnswer.NoSuchChoice missing) {
            throw wrong(ChoiceWords.missing(missing));
        }
        return console.refuse(answer.account(), answer.findings(), Exit.BAD_INPUT);
    }

    private SwapRequest request() {
        SwapRequest.Only only = new SwapRequest.Only(said(formula), said(material), said(function));
        return new SwapRequest(
                options.sources(),
                runs.sizes(),
                only,
                changes(),
                leastCloseness(),
                Options.isOn(actives),
                Options.isOn(anyHlb),
                Options.said(apply, Choice.class),
                Options.said(bench, BigDecimal.class),
                today());
    }

    private void checkUsage() {
        output.checkUsage();
        runs.checkUsage();
        int most = changes();
        if (most < 0) {
            throw wrong(CommandMessages.negativeChanges(most));
        }
        BigDecimal grams = Options.said(bench, BigDecimal.class);
        if (grams != null && grams.compareTo(LEAST_GRAMS) < 0) {
            throw wrong(CommandMessages.benchTooSmall(grams));
        }
        BigDecimal least = leastCloseness();
        if (least.signum() < 0 || least.compareTo(MOST_CLOSE) > 0) {
            throw wrong(CommandMessages.closenessOutside(least.toPlainString()));
        }
    }

    private BigDecimal leastCloseness() {
        return closeness.<BigDecimal>getValue();
    }

    private int changes() {
        return changes.<Integer>getValue();
    }

    private static @Nullable String said(OptionSpec option) {
        return Options.said(option, String.class);
    }

    private int said(Console console, FileStamp book, SwapAnswer.Found answer) throws IOException {
        Written written = output.destination().write(book, Destination.SWAPPED, answer.report(), today());
        if (options.json()) {
            console.json(SwapJson.of(answer.found(), answer.next(), answer.findings(), answer.added()));
        }
        if (!answer.isComplete()) {
            console.say(CommandMessages.searchedInPart());
        }
        new SwapWords(answer.found()).say(console);
        answer.added().ifPresent(formula -> console.say("New formula: \"" + formula.name() + "\""));
        console.findings(answer.findings());
        console.written(written);
        return answer.isComplete() ? Exit.DONE : Exit.PARTLY;
    }
}
