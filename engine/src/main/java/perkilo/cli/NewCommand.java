package perkilo.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import perkilo.desk.StartBook;
import perkilo.desk.Template;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The command {@code new}: starts a workbook from a template. */
final class NewCommand extends Command {

    private final PositionalParamSpec name = Options.parameter(0, "0..1", String.class, "NAME", "The template's name.");
    private final PositionalParamSpec book = Options.parameter(1, "0..1", Path.class, "BOOK", "The workbook to write.");
    private final OptionSpec list = Options.flag("Show the templates.", "--list");

    NewCommand() {
        super("new", "Start a workbook from a template. --list shows the templates.");
        takes(name, book, list);
    }

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec().commandLine().getOut();
        if (Options.isOn(list)) {
            for (Template template : Template.values()) {
                out.printf("%-10s  %s%n", template.word(), template.purpose());
            }
            out.flush();
            return Exit.DONE;
        }
        String word = Options.said(name, String.class);
        Path target = Options.said(book, Path.class);
        if (word == null || target == null) {
            throw wrong(CommandMessages.noTemplateNamed());
        }
        if (!target.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx")) {
            throw wrong(CommandMessages.wrongEnding(String.valueOf(target.getFileName())));
        }
        List<String> all = Arrays.stream(Template.values()).map(Template::word).toList();
        Template template =
                Template.find(word).orElseThrow(() -> wrong(CommandMessages.noTemplate(word, Guess.near(word, all))));
        out.println("Written to " + new StartBook().start(template, target));
        out.flush();
        return Exit.DONE;
    }
}
