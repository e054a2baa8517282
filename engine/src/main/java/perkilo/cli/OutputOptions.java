package perkilo.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.OptionSpec;

/** Where a command writes its result sheets. */
final class OutputOptions {

    private final Command command;
    private final OptionSpec out = Options.value(
            Path.class,
            "FILE",
            "The workbook to write; usually BOOK's name with an ending of the command. What stands there and is no"
                    + " result of an earlier run is kept beside it.",
            "-o",
            "--out");
    private final OptionSpec inPlace =
            Options.flag("Write into BOOK itself; a dated backup is kept beside it.", "--in-place");
    private final OptionSpec sheetOnly = Options.flag(
            "Write a workbook of the result sheets alone, with plain figures instead of formulas over BOOK.",
            "--sheet-only");

    OutputOptions(Command command) {
        this.command = command;
        command.takes(out, inPlace, sheetOnly);
    }

    /** Whether anything was said of where results go. */
    boolean isAny() {
        return out() != null || inPlace() || sheetOnly();
    }

    /** What was given as the place for results; null for nothing. */
    @Nullable Path out() {
        return Options.said(out, Path.class);
    }

    /** Whether the result goes into the workbook itself. */
    boolean inPlace() {
        return Options.isOn(inPlace);
    }

    /** Whether the result stands alone. */
    boolean sheetOnly() {
        return Options.isOn(sheetOnly);
    }

    /**
     * Looks for options that contradict each other.
     *
     * @throws picocli.CommandLine.ParameterException if any do
     */
    void checkUsage() {
        if (inPlace() && (out() != null || sheetOnly())) {
            throw command.wrong("--in-place writes into BOOK itself: leave out --out and --sheet-only");
        }
    }

    /** The file that was asked for, or another one. */
    Path or(Path usual) {
        Path said = out();
        return said == null ? usual : said;
    }

    /**
     * The file to write.
     *
     * @param book the person's workbook
     * @param suffix what the command adds to the name, such as {@code -costed}
     */
    Path target(Path book, String suffix) {
        return inPlace() ? book : or(book.resolveSibling(resultName(book, suffix)));
    }

    /**
     * The file to write for one of several books.
     *
     * @param folder where the results go; null for beside each book
     */
    Path targetIn(@Nullable Path folder, Path book, String suffix) {
        if (inPlace()) {
            return book;
        }
        String name = resultName(book, suffix);
        return folder == null ? book.resolveSibling(name) : folder.resolve(name);
    }

    private String resultName(Path book, String suffix) {
        String name = String.valueOf(book.getFileName());
        int dot = name.lastIndexOf('.');
        String stem = dot < 0 ? name : name.substring(0, dot);
        String ending = dot < 0 ? ".xlsx" : sheetOnly() ? ".xlsx" : name.substring(dot);
        return stem + suffix + ending;
    }
}
