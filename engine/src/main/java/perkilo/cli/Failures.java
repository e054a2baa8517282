package perkilo.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** Says what went wrong: a file's fault in its own words, anything else as a fault of the tool. */
final class Failures implements IExecutionExceptionHandler {

    private final OptionSpec debug;

    /**
     * Says what went wrong.
     *
     * @param debug whether a stack trace is wanted as well
     */
    Failures(OptionSpec debug) {
        this.debug = debug;
    }

    @Override
    public int handleExecutionException(Exception failed, CommandLine command, ParseResult parsed) {
        return said(failed, command.getErr());
    }

    /** Says it, and gives the exit code back. */
    int said(Throwable failed, PrintWriter err) {
        Throwable file = failed instanceof UncheckedIOException unchecked ? unchecked.getCause() : failed;
        int exit = Exit.FAULT;
        boolean wanted = Options.isOn(debug);
        if (failed instanceof OutOfMemoryError) {
            err.println(
                    "There is not enough memory for these files; give Java more, as in: java -Xmx2g -jar perkilo.jar …");
            exit = Exit.FILE;
        } else if (file instanceof IOException) {
            err.println(file.getMessage());
            exit = Exit.FILE;
        } else {
            err.println("This is a fault in Perkilo, not in your file: " + failed
                    + (wanted ? "" : ". Run it again with --debug and report what it prints."));
        }
        if (wanted) {
            failed.printStackTrace(err);
        }
        err.flush();
        return exit;
    }
}
