package perkilo.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** Where a command writes its result sheets. */
final class OutputOptions {

    @Option(
            names = {"-o", "--out"},
            paramLabel = "FILE",
            description = "The workbook to write; usually BOOK's name with an ending of the command.")
    private @Nullable Path out;

    @Option(names = "--in-place", description = "Write into BOOK itself; a dated backup is kept beside it.")
    private boolean inPlace;

    @Option(
            names = "--sheet-only",
            description =
                    "Write a workbook of the result sheets alone, with plain figures instead of formulas over BOOK.")
    private boolean sheetOnly;

    /** Whether anything was said of where results go. */
    boolean isAny() {
        return out != null || inPlace || sheetOnly;
    }

    /** What was given as the place for results; null for nothing. */
    @Nullable Path out() {
        return out;
    }

    /** Whether the result goes into the workbook itself. */
    boolean inPlace() {
        return inPlace;
    }

    /** Whether the result stands alone. */
    boolean sheetOnly() {
        return sheetOnly;
    }

    /**
     * Looks for options that contradict each other.
     *
     * @throws ParameterException if any do
     */
    void checkUsage(CommandSpec spec) {
        if (inPlace && (out != null || sheetOnly)) {
            throw new ParameterException(
                    spec.commandLine(), "--in-place writes into BOOK itself: leave out --out and --sheet-only");
        }
    }

    /** The file that was asked for, or another one. */
    Path or(Path usual) {
        return out == null ? usual : out;
    }

    /**
     * The file to write.
     *
     * @param book the person's workbook
     * @param suffix what the command adds to the name, such as {@code -costed}
     */
    Path target(Path book, String suffix) {
        if (inPlace) {
            return book;
        }
        if (out != null) {
            return out;
        }
        return book.resolveSibling(resultName(book, suffix));
    }

    /**
     * The file to write for one of several books.
     *
     * @param folder where the results go; null for beside each book
     */
    Path targetIn(@Nullable Path folder, Path book, String suffix) {
        if (inPlace) {
            return book;
        }
        String name = resultName(book, suffix);
        return folder == null ? book.resolveSibling(name) : folder.resolve(name);
    }

    private String resultName(Path book, String suffix) {
        String name = String.valueOf(book.getFileName());
        int dot = name.lastIndexOf('.');
        String stem = dot < 0 ? name : name.substring(0, dot);
        String ending = dot < 0 ? ".xlsx" : sheetOnly ? ".xlsx" : name.substring(dot);
        return stem + suffix + ending;
    }
}
