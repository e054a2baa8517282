package perkilo.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.logging.Level;
import java.util.logging.Logger;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The command {@code perkilo}. */
@Command(
        name = "perkilo",
        description = "What a formula costs per kilo and per unit, what to buy, and what could replace what.",
        mixinStandardHelpOptions = true,
        versionProvider = Perkilo.Version.class,
        footer = {"", "perkilo COMMAND --help says more about a command."},
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:done",
            "1:the input has errors; all are listed, and nothing is written",
            "2:the command line was wrong",
            "3:no purchase covers every need; nothing is written",
            "4:a file cannot be read or written"
        })
public final class Perkilo implements Runnable {

    /** Kept here, as loggers that nobody holds are forgotten with their levels. */
    private static final Logger MONETA = Logger.getLogger("org.javamoney");

    @Option(
            names = "--debug",
            scope = ScopeType.INHERIT,
            description = "Print a stack trace where something fails unexpectedly.")
    private boolean debug;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    /** Runs a command and ends with its exit code. */
    public static void main(String[] arguments) {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        System.exit(run(out, err, arguments));
    }

    /**
     * Runs a command.
     *
     * @param out for the answer
     * @param err for messages
     * @return the exit code
     */
    public static int run(PrintWriter out, PrintWriter err, String... arguments) {
        MONETA.setLevel(Level.WARNING);
        Perkilo perkilo = new Perkilo();
        CommandLine line = Commands.line(perkilo, arguments)
                .setOut(out)
                .setErr(err)
                .setExecutionExceptionHandler((failed, command, parsed) -> explain(failed, command, perkilo.debug));
        try {
            return line.execute(arguments);
        } catch (OutOfMemoryError e) {
            err.println(
                    "There is not enough memory for these files; give Java more, as in: java -Xmx2g -jar perkilo.jar …");
            err.flush();
            return Exit.FILE;
        }
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "say what to do; --help lists the commands");
    }

    private static int explain(Exception failed, CommandLine line, boolean debug) {
        PrintWriter err = line.getErr();
        if (failed instanceof IOException) {
            err.println(failed.getMessage());
        } else {
            err.println("This is a fault in Perkilo, not in your file: " + failed
                    + (debug ? "" : ". Run it again with --debug and report what it prints."));
        }
        if (debug) {
            failed.printStackTrace(err);
        }
        err.flush();
        return Exit.FILE;
    }

    /** The version, as the jar states it. */
    static final class Version implements CommandLine.IVersionProvider {

        @Override
        public String[] getVersion() {
            String version = Perkilo.class.getPackage().getImplementationVersion();
            return new String[] {"Perkilo " + (version == null ? "(not packaged)" : version)};
        }
    }
}
