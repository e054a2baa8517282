package perkilo.cli;

import java.io.IOException;
import java.nio.file.Files;
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
import perkilo.reading.PriceFiles;
import perkilo.review.prices.PriceReview;
import perkilo.sheet.Report;
import perkilo.xlsx.parts.FileStamp;
import perkilo.xlsx.write.Written;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The command {@code prices}: takes price lists of suppliers in, and shows what changed since the last ones. */
final class PricesCommand extends Command {

    /** The workbook for the changes where no workbook is named. */
    private static final Path ALONE = Path.of("price-changes.xlsx");

    private final PositionalParamSpec files = Options.parameters(
            "0..*",
            Path.class,
            "FILE",
            "Price lists (.xlsx, .csv or .json) or folders of them. Nothing, to try those again that wait for answers."
                    + " With --changes: the workbook to cost, or nothing.");
    private final OptionSpec folder = Options.valueOr(
            "prices",
            Path.class,
            "FOLDER",
            "The folder that lists are kept in. Default: ${DEFAULT-VALUE}.",
            "--prices");
    private final OptionSpec supplier =
            Options.value(String.class, "NAME", "The supplier, if the list does not say whose it is.", "--supplier");
    private final OptionSpec quoted =
            Options.day("The first day the list is valid, if the list does not say.", "--quoted");
    private final OptionSpec validUntil =
            Options.day("The last day the list is valid, if the list does not say.", "--valid-until");
    private final OptionSpec book = Options.value(
            Path.class,
            "BOOK",
            "A workbook whose names are matched with the names on the list, as those in the folder are.",
            "--book");
    private final OptionSpec review = Options.value(
            Path.class,
            "FILE",
            "The workbook with the questions and with what was read. Default: prices-review.xlsx in the folder.",
            "--review");
    private final OptionSpec changes =
            Options.flag("Show which prices rose or fell since the last lists.", "--changes");
    private final OptionSpec rates =
            Options.value(Path.class, "FILE", "With --changes: exchange rates, a dated table.", "--rates");
    private final OptionSpec date =
            Options.day("With --changes: the day to look from, instead of the workbook's costing date.", "--date");
    private final PrintOptions printing;
    private final OutputOptions output;
    private final RunOptions runs;

    PricesCommand() {
        super(
                "prices",
                "Take in price lists of suppliers, in any layout, and keep them by supplier and date. What is not clear is asked"
                        + " in a workbook; answer there and run the command again.",
                "With --changes: show which prices rose or fell since the last lists, and what that does to the costs"
                        + " of a workbook.");
        takes(files, folder, supplier, quoted, validUntil, book, review, changes, rates, date);
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
        return takeIn(new TakeInRequest(named, folder(), Options.said(book, Path.class), said, review()));
    }

    private int takeIn(TakeInRequest request) throws IOException {
        Console console = console();
        TakeInAnswer answer;
        try (Progress progress = console.progress()) {
            answer = new TakeInPrices().take(request, progress);
        }
        new TakenInWords(console).say(answer);
        if (answer.allKept()) {
            return Exit.DONE;
        }
        return answer.anyKept() ? Exit.PARTLY : Exit.BAD_INPUT;
    }

    private Path review() {
        Path named = Options.said(review, Path.class);
        return named == null ? folder().resolve(PriceReview.FILE) : named;
    }

    private int showChanges(List<Path> named) throws IOException {
        Path workbook = named.isEmpty() ? null : named.get(0);
        FileStamp read = workbook == null ? null : FileStamp.of(workbook);
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
            return console.refuse(answer.account(), answer.findings(), Exit.BAD_INPUT);
        }
        new PriceChangesWords(console).say(changed, written(read, changed.report()));
        return Exit.DONE;
    }

    private Written written(@Nullable FileStamp workbook, Report report) throws IOException {
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
        if (named.isEmpty() && !Files.exists(review())) {
            throw wrong(CommandMessages.noLists());
        }
        if (!review().toString().endsWith(PriceFiles.REVIEW_ENDING)) {
            throw wrong(CommandMessages.badReview(review()));
        }
        if (output.isAny() || runs.isAny() || isSaid(rates) || isSaid(date)) {
            throw wrong(CommandMessages.onlyForChanges());
        }
    }

    private void checkChanges(List<Path> named) {
        if (named.size() > 1) {
            throw wrong(CommandMessages.changesOfSeveralBooks());
        }
        if (isSaid(supplier) || isSaid(quoted) || isSaid(validUntil) || isSaid(book) || isSaid(review)) {
            throw wrong(CommandMessages.onlyForTakingIn());
        }
        if (named.isEmpty() && output.inPlace()) {
            throw wrong(CommandMessages.inPlaceWithoutBook());
        }
        output.checkUsage();
        runs.checkUsage();
    }

    private static boolean isSaid(OptionSpec option) {
        return option.getValue() != null;
    }
}
