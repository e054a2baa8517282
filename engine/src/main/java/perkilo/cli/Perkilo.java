package perkilo.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ScopeType;

/** The command {@code perkilo}. */
public final class Perkilo extends Command {

    private final OptionSpec debug = Options.flagBuilder(
                    "Print a stack trace where something fails unexpectedly.", "--debug")
            .scopeType(ScopeType.INHERIT)
            .build();

    private Perkilo(String... arguments) {
        super("perkilo", "What a formula costs per kilo and per unit, what to buy, and what could replace what.");
        takes(debug);
        spec().usageMessage()
                .exitCodeListHeading("%nExit codes:%n")
                .exitCodeList(Exit.meanings())
                .footer("", "perkilo COMMAND --help says more about a command.");
        Commands.addTo(spec(), arguments);
    }

    /** Runs a command and ends with its exit code. */
    public static void main(String[] arguments) {
        Locale.setDefault(Locale.ENGLISH); // what is printed is English, numbers included
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
        Perkilo perkilo = new Perkilo(arguments);
        CommandLine line = new CommandLine(perkilo.spec())
                .setOut(out)
                .setErr(err)
                .setExecutionExceptionHandler(new Failures(perkilo.debug));
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
    public Integer call() {
        throw wrong("say what to do; --help lists the commands");
    }
}
