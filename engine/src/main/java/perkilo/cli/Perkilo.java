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
                    "Print a stack trace if something fails unexpectedly.", "--debug")
            .scopeType(ScopeType.INHERIT)
            .build();

    private Perkilo() {
        super(
                "perkilo",
                "What a formula costs per kilo and per unit, what to buy, and which materials could replace others.");
        takes(debug);
        spec().usageMessage()
                .exitCodeListHeading("%nExit codes:%n")
                .exitCodeList(Exit.meanings())
                .footer("", "Type perkilo COMMAND --help for more about a command.");
    }

    /** Runs a command and ends with its exit code. */
    public static void main(String[] arguments) {
        Locale.setDefault(Locale.ENGLISH); // all output is English, numbers included
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        boolean few = arguments.length < 2; // nothing of a desktop is looked at for a whole command
        String[] meant = few ? Desktop.meant(arguments, Progress.onTerminal(), Desktop.isThere()) : arguments;
        System.exit(run(out, err, meant));
    }

    /**
     * Runs a command.
     *
     * @param out for the answer
     * @param err for messages
     * @return the exit code
     */
    public static int run(PrintWriter out, PrintWriter err, String... arguments) {
        TypedWords words = TypedWords.of(arguments);
        String wrong = words.wrong();
        if (wrong != null) {
            err.println(wrong);
            err.flush();
            return Exit.USAGE;
        }
        Perkilo perkilo = new Perkilo();
        Commands.addTo(perkilo.spec(), words);
        return perkilo.execute(out, err, words.arguments().toArray(new String[0]));
    }

    /** Runs a command that is not among the usual ones. */
    static int run(PrintWriter out, PrintWriter err, Command command, String... arguments) {
        Perkilo perkilo = new Perkilo();
        perkilo.spec().addSubcommand(command.spec().name(), new CommandLine(command.spec()));
        return perkilo.execute(out, err, arguments);
    }

    private int execute(PrintWriter out, PrintWriter err, String... arguments) {
        Failures failures = new Failures(debug);
        CommandLine line = new CommandLine(spec())
                .setOut(out)
                .setErr(err)
                .setExecutionExceptionHandler(failures)
                .setParameterExceptionHandler(new WrongUsage());
        try {
            return line.execute(arguments);
        } catch (Error | RuntimeException failed) {
            return failures.said(failed, err);
        }
    }

    /** Prints the usage, as no command was given. */
    @Override
    public Integer call() {
        PrintWriter err = spec().commandLine().getErr();
        err.println(CommandMessages.noCommand());
        spec().commandLine().usage(err);
        return Exit.USAGE;
    }
}
