package perkilo.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.desk.Destination;
import perkilo.desk.PriceChangesAnswer;
import perkilo.desk.PriceChangesRequest;
import perkilo.desk.ShowPriceChanges;
import perkilo.desk.TakeInAnswer;
import perkilo.desk.TakeInPrices;
import perkilo.desk.TakeInRequest;
import perkilo.pricelists.TakeIn;
import perkilo.sheet.Report;
import perkilo.xlsx.write.Written;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** Takes suppliers' price lists in, and shows what changed since the last ones. */
final class PricesCommand extends Command {

    /** The workbook of changes that are of no book. */
    private static final Path ALONE = Path.of("price-changes.xlsx");

    private final PositionalParamSpec files = Options.parameters(
            "0..*",
            Path.class,
            "FILE",
            "Price lists, .xlsx, .csv or .json; with --changes the workbook to cost, or nothing.");
    private final OptionSpec folder = Options.valueOr(
            "prices", Path.class, "FOLDER", "The folder that lists are kept in; usually ${DEFAULT-VALUE}.", "--prices");
    private final OptionSpec supplier =
            Options.value(String.class, "NAME", "Whose list it is, where the list doesn't tell.", "--supplier");
    private final OptionSpec quoted =
            Options.day("The day the list holds from, where the list doesn't tell.", "--quoted");
    private final OptionSpec validUntil =
            Options.day("The last day the list holds, where the list doesn't tell.", "--valid-until");
    private final OptionSpec book = Options.value(
            Path.class,
            "BOOK",
            "A workbook whose names the list's names are matched with, besides the folder's materials.",
            "--book");
    private final OptionSpec changes = Options.flag("Show what rose or fell since the last lists.", "--changes");
    private final OptionSpec rates =
            Options.value(Path.class, "FILE", "With --changes: exchange rates, a dated table.", "--rates");
    private final OptionSpec date =
            Options.day("With --changes: the day to look from, in place of the workbook's costing date.", "--date");
    private final PrintOptions printing;
    private final OutputOptions output;
    private final RunOptions runs;

    PricesCommand() {
        super(
                "prices",
                "Take suppliers' price lists in, in whatever layout they come, and keep them by supplier and date.",
                "With --changes: show what rose or fell since the last lists, and what that does to a workbook's"
                        + " costs.");
        takes(files, folder, supplier, quoted, validUntil, book, changes, rates, date);
        printing = new PrintOptions(this);
        output = new OutputOptions(this);
        runs = new RunOptions(this);
    }

    @Override
    public Integer call() throws IOException {
        List<Path> named = Options.allSaid(files, Path.class);
        if (Options.isOn(changes)) {
            checkChanges(named);
            return showChanges(named);
        }
        checkIntake(named);
        TakeIn.Said said = new TakeIn.Said(
                Options.said(supplier, String.class),
                Options.said(quoted, LocalDate.class),
                Options.said(validUntil, LocalDate.class));
        return takeIn(new TakeInRequest(named, folder(), Options.said(book, Path.class), said));
    }

    private int takeIn(TakeInRequest request) throws IOException {
        Console console = console();
        TakeInAnswer answer;
        try (Progress progress = console.progress()) {
            answer = new TakeInPrices().take(request, progress);
        }
        new TakenInWords(console).say(answer);
        return answer.allKept() ? Exit.DONE : Exit.BAD_INPUT;
    }

    private int showChanges(List<Path> named) throws IOException {
        Path workbook = named.isEmpty() ? null : named.get(0);
        PriceChangesRequest request = new PriceChangesRequest(
                folder(),
                workbook,
                Options.said(rates, Path.class),
                Options.said(date, LocalDate.class),
                runs.sizes(),
                today());
        Console console = console();
        PriceChangesAnswer answer;
        try (Progress progress = console.progress()) {
            answer = new ShowPriceChanges().show(request, progress);
        }
        if (!(answer instanceof PriceChangesAnswer.Changed changed)) {
            return console.refuse(
                    answer.findings(), answer instanceof PriceChangesAnswer.BadInput ? Exit.BAD_INPUT : Exit.NO_PLAN);
        }
        new PriceChangesWords(console).say(changed, written(workbook, changed.report()));
        return Exit.DONE;
    }

    private Written written(@Nullable Path workbook, Report report) throws IOException {
        return workbook == null
                ? output.destination().writeAlone(report, ALONE)
                : output.destination().write(workbook, Destination.PRICES, report, today());
    }

    private Console console() {
        return new Console(this, printing.json(), printing.quiet());
    }

    private Path folder() {
        return folder.getValue();
    }

    private void checkIntake(List<Path> named) {
        if (named.isEmpty()) {
            throw wrong("name the price lists to take in, or use --changes");
        }
        if (output.isAny() || runs.isAny() || isSaid(rates) || isSaid(date)) {
            throw wrong(
                    "--out, --in-place, --sheet-only, --date, --rates, --units and --batch-kg are for --changes, not"
                            + " for taking lists in");
        }
    }

    private void checkChanges(List<Path> named) {
        if (named.size() > 1) {
            throw wrong("--changes takes one workbook, or none");
        }
        if (isSaid(supplier) || isSaid(quoted) || isSaid(validUntil) || isSaid(book)) {
            throw wrong("--supplier, --quoted, --valid-until and --book are for taking lists in, not for --changes");
        }
        if (named.isEmpty() && output.inPlace()) {
            throw wrong("--in-place needs a workbook to write into");
        }
        output.checkUsage();
        runs.checkUsage();
    }

    private static boolean isSaid(OptionSpec option) {
        return option.getValue() != null;
    }
}
