package perkilo.cli;

import picocli.CommandLine.Model.OptionSpec;

/** The options for how a command prints its answer. */
final class PrintOptions {

    private final OptionSpec json =
            Options.flag("Print the answer as JSON on standard output, and nothing else there.", "--json");
    private final OptionSpec quiet =
            Options.flag("Print no table and no notes. Warnings and errors are still printed.", "-q", "--quiet");

    PrintOptions(Command command) {
        command.takes(json, quiet);
    }

    /** Whether the answer is printed as JSON. */
    boolean json() {
        return Options.isOn(json);
    }

    /** Whether tables and notes are left out. */
    boolean quiet() {
        return Options.isOn(quiet);
    }
}
