package perkilo.cli;

import java.io.IOException;
import java.nio.file.Path;
import perkilo.desk.CheckBook;
import perkilo.desk.Checked;
import perkilo.desk.Destination;
import perkilo.desk.ReviewReading;
import perkilo.json.Json;
import perkilo.sheet.Report;
import perkilo.xlsx.parts.FileStamp;
import picocli.CommandLine.Model.OptionSpec;

/** The command {@code check}: reads everything and lists every problem with its cell. */
final class CheckCommand extends Command {

    private final BookOptions options;
    private final OptionSpec review = Options.flag(
            "Write a copy of the workbook with a sheet Reading, on which you say what its sheets and columns are.",
            "--review");
    private final OptionSpec out = Options.value(
            Path.class, "FILE", "The workbook to write. Default: BOOK's name with -review.", "-o", "--out");
    private final OptionSpec inPlace =
            Options.flag("Write the sheet into BOOK itself. A dated backup is kept beside it.", "--in-place");

    CheckCommand() {
        super("check", "Read a workbook and list every problem with its cell. Nothing is changed.");
        options = new BookOptions(this);
        takes(review, out, inPlace);
    }

    @Override
    public Integer call() throws IOException {
        Path target = Options.said(out, Path.class);
        boolean within = Options.isOn(inPlace);
        if (!Options.isOn(review) && (target != null || within)) {
            throw wrong(CommandMessages.onlyWithReview());
        }
        if (target != null && within) {
            throw wrong(CommandMessages.inPlaceAndElsewhere());
        }
        FileStamp book = FileStamp.of(options.book());
        Console console = new Console(this, options);
        Checked checked;
        try (Progress progress = console.progress()) {
            checked = new CheckBook().check(options.sources(), today(), progress);
        }
        if (options.json()) {
            console.json(Json.onlyMessages(checked.reading().account(), checked.findings()));
        }
        CheckWords.say(console, checked);
        if (Options.isOn(review)) {
            Report report = new ReviewReading().propose(options.sources(), today());
            console.written(new Destination(target, within, false).write(book, Destination.REVIEW, report, today()));
        }
        return checked.hasErrors() ? Exit.BAD_INPUT : Exit.DONE;
    }
}
