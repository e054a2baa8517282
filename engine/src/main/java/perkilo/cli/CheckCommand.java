package perkilo.cli;

import java.io.IOException;
import perkilo.desk.CheckBook;
import perkilo.desk.Checked;
import perkilo.json.Json;

/** The command {@code check}: reads everything and lists every problem with its cell. */
final class CheckCommand extends Command {

    private final BookOptions options;

    CheckCommand() {
        super("check", "Read a workbook and list every problem with its cell. Nothing is changed.");
        options = new BookOptions(this);
    }

    @Override
    public Integer call() throws IOException {
        Console console = new Console(this, options);
        Checked checked;
        try (Progress progress = console.progress()) {
            checked = new CheckBook().check(options.sources(), today(), progress);
        }
        if (options.json()) {
            console.json(Json.onlyMessages(checked.reading().account(), checked.findings()));
        }
        CheckWords.say(console, checked);
        return checked.hasErrors() ? Exit.BAD_INPUT : Exit.DONE;
    }
}
