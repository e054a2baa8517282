package perkilo.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** Prints why a command failed: a problem with a file in its own words, anything else as a fault of the program. */
final class Failures implements IExecutionExceptionHandler {

    private final OptionSpec debug;

    /**
     * A printer of failures.
     *
     * @param debug whether a stack trace is printed as well
     */
    Failures(OptionSpec debug) {
        this.debug = debug;
    }

    @Override
    public int handleExecutionException(Exception failed, CommandLine command, ParseResult parsed) {
        return said(failed, command.getErr());
    }

    /** Prints the failure and returns the exit code. */
    int said(Throwable failed, PrintWriter err) {
        Throwable file = failed instanceof UncheckedIOException unchecked ? unchecked.getCause() : failed;
        int exit = Exit.FAULT;
        boolean wanted = Options.isOn(debug);
        if (failed instanceof OutOfMemoryError) {
            err.println(CommandMessages.noMemory());
            exit = Exit.FILE;
        } else if (file instanceof IOException) {
            err.println(file.getMessage());
            exit = Exit.FILE;
        } else {
            String what = failed.toString();
            err.println(wanted ? CommandMessages.faultWithTrace(what) : CommandMessages.fault(what));
        }
        if (wanted) {
            failed.printStackTrace(err);
        }
        err.flush();
        return exit;
    }
}
