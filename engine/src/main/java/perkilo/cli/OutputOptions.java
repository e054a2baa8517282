package perkilo.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import perkilo.desk.Destination;
import picocli.CommandLine.Model.OptionSpec;

/** The options for where a command writes its result sheets. */
final class OutputOptions {

    private final Command command;
    private final OptionSpec out = Options.value(
            Path.class,
            "FILE",
            "The workbook to write. Default: BOOK's name with an ending for the command, such as -costed. A file that"
                    + " it replaces is kept beside it, unless it is the result of an earlier run.",
            "-o",
            "--out");
    private final OptionSpec inPlace =
            Options.flag("Write into BOOK itself. A dated backup is kept beside it.", "--in-place");
    private final OptionSpec sheetOnly = Options.flag(
            "Write a workbook with the result sheets only, with plain figures instead of formulas that refer to BOOK.",
            "--sheet-only");

    OutputOptions(Command command) {
        this.command = command;
        command.takes(out, inPlace, sheetOnly);
    }

    /** Whether any of these options was given. */
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
     * Checks that the options do not contradict each other.
     *
     * @throws picocli.CommandLine.ParameterException if they do
     */
    void checkUsage() {
        if (inPlace() && (out() != null || sheetOnly())) {
            throw command.wrong(CommandMessages.inPlaceAndElsewhere());
        }
    }

    /** Where results go. */
    Destination destination() {
        return new Destination(out(), inPlace(), sheetOnly());
    }
}
