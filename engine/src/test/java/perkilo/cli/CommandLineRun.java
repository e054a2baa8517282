package perkilo.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A command that was run as a person would run it.
 *
 * @param exit its exit code
 * @param out what it printed on standard output
 * @param err what it printed on standard error
 */
record CommandLineRun(int exit, String out, String err) {

    /** Runs the whole tool. */
    static CommandLineRun of(Object... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exit = Perkilo.run(new PrintWriter(out), new PrintWriter(err), words(arguments));
        return new CommandLineRun(exit, out.toString(), err.toString());
    }

    /** Runs one command that was made for the test. */
    static CommandLineRun ofCommand(Command command, Object... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        List<String> all = new ArrayList<>(List.of(command.spec().name()));
        all.addAll(List.of(words(arguments)));
        int exit = Perkilo.run(new PrintWriter(out), new PrintWriter(err), command, all.toArray(String[]::new));
        return new CommandLineRun(exit, out.toString(), err.toString());
    }

    private static String[] words(Object... arguments) {
        return Arrays.stream(arguments).map(Object::toString).toArray(String[]::new);
    }
}
