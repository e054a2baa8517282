package perkilo.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import perkilo.desk.Destination;
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

    private @Nullable Path out() {
        return Options.said(out, Path.class);
    }

    /** Whether the result goes into the workbook itself. */
    boolean inPlace() {
        return Options.isOn(inPlace);
    }

    private boolean sheetOnly() {
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

    /** Where results go. */
    Destination destination() {
        return new Destination(out(), inPlace(), sheetOnly());
    }
}
