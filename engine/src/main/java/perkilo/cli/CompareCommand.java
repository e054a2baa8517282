package perkilo.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.desk.CompareAnswer;
import perkilo.desk.CompareBooks;
import perkilo.desk.CompareRequest;
import perkilo.desk.Destination;
import perkilo.desk.RunSizes;
import perkilo.json.CompareJson;
import perkilo.reading.Sources;
import perkilo.report.decision.VarianceTable;
import perkilo.xlsx.parts.FileStamp;
import perkilo.xlsx.write.Written;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The command {@code compare}: why the unit cost changed, part by part, or is other than planned. */
final class CompareCommand extends Command {

    private final PositionalParamSpec other = Options.parameter(
            1,
            "0..1",
            Path.class,
            "OTHER",
            "The workbook as it is now; BOOK is how it was. Its result sheets go into a copy of it.");
    private final OptionSpec dates = Options.listed(
            String.class,
            "A,B",
            "Compare BOOK on two costing dates instead, such as 2026-05-01,2026-11-01.",
            "--dates");
    private final BookOptions options;
    private final SourceOptions sources;
    private final OutputOptions output;
    private final RunOptions runs;

    CompareCommand() {
        super(
                "compare",
                "Say why the unit cost changed, part by part: recipe, process, price, exchange rate, charges, purchase choice,"
                        + " one-offs. The parts add up to the change. Without OTHER and --dates, the plan is compared with the"
                        + " workbook's Actuals.");
        options = new BookOptions(this);
        sources = options.more();
        takes(other);
        output = new OutputOptions(this);
        runs = new RunOptions(this);
        takes(dates);
    }

    @Override
    public Integer call() throws IOException {
        output.checkUsage();
        runs.checkUsage();
        Path second = Options.said(other, Path.class);
        List<LocalDate> days = days(second);
        Path shown = second == null ? options.book() : second;
        Console console = new Console(this, options);
        boolean planned = second == null && days.isEmpty();
        if (planned && !runs.sizes().equals(RunSizes.OF_THE_BOOK)) {
            throw wrong(CommandMessages.sizesOfActuals());
        }
        FileStamp book = FileStamp.of(shown);
        CompareAnswer answer;
        try (Progress progress = console.progress()) {
            CompareBooks books = new CompareBooks();
            answer = planned
                    ? books.withActuals(options.sources(), today(), progress)
                    : books.compare(request(shown, days), progress);
        }
        if (answer instanceof CompareAnswer.NoActuals) {
            throw wrong(CommandMessages.nothingToCompareWith());
        }
        if (!(answer instanceof CompareAnswer.Compared compared)) {
            return console.refuse(answer.account(), answer.findings(), Exit.BAD_INPUT);
        }
        Written written = output.destination().write(book, Destination.COMPARED, compared.report(), today());
        if (options.json()) {
            console.json(
                    CompareJson.of(compared.after(), compared.variances(), compared.actuals(), compared.findings()));
        }
        if (!compared.isComplete()) {
            console.say(CommandMessages.answeredWithErrors());
        }
        String home = compared.after().book().settings().home().getCurrencyCode();
        console.table(TextTable.of(
                new VarianceTable(home).onSheet().with(compared.variances().runs())));
        console.findings(compared.findings());
        console.written(written);
        return compared.isComplete() ? Exit.DONE : Exit.PARTLY;
    }

    private CompareRequest request(Path shown, List<LocalDate> days) {
        if (days.isEmpty()) {
            return new CompareRequest(options.sources(), sources.with(shown), runs.sizes(), today());
        }
        return new CompareRequest(on(days.get(0)), on(days.get(1)), runs.sizes(), today());
    }

    private Sources on(LocalDate day) {
        return new Sources(options.book(), sources.prices(), sources.rates(), day);
    }

    private List<LocalDate> days(@Nullable Path second) {
        List<String> typed = Options.allSaid(dates, String.class);
        if (!typed.isEmpty() && second != null) {
            throw wrong(CommandMessages.bookOrDates());
        }
        if (!typed.isEmpty() && sources.date() != null) {
            throw wrong(CommandMessages.dateAndDates());
        }
        List<LocalDate> days = new ArrayList<>();
        for (String one : typed) {
            try {
                days.add(LocalDate.parse(one.strip()));
            } catch (DateTimeParseException e) {
                throw wrong(CommandMessages.notTwoDays(typed));
            }
        }
        if (days.size() != 0 && days.size() != 2) {
            throw wrong(CommandMessages.notTwoDays(typed));
        }
        return days;
    }
}
