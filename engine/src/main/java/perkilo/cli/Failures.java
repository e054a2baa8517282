package perkilo.cli;

import java.io.IOException;
import java.io.PrintWriter;
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
        PrintWriter err = command.getErr();
        boolean wanted = Options.isOn(debug);
        if (failed instanceof IOException) {
            err.println(failed.getMessage());
        } else {
            err.println("This is a fault in Perkilo, not in your file: " + failed
                    + (wanted ? "" : ". Run it again with --debug and report what it prints."));
        }
        if (wanted) {
            failed.printStackTrace(err);
        }
        err.flush();
        return Exit.FILE;
    }
}
