package perkilo.cli;

import picocli.CommandLine.Model.OptionSpec;

/** How a command prints its answer, as every command takes it. */
final class PrintOptions {

    private final OptionSpec json =
            Options.flag("Print the answer as JSON, and nothing else, on standard output.", "--json");
    private final OptionSpec quiet =
            Options.flag("Print no table and no notes; warnings and errors stay.", "-q", "--quiet");

    PrintOptions(Command command) {
        command.takes(json, quiet);
    }

    /** Whether the answer is printed as JSON. */
    boolean json() {
        return Options.isOn(json);
    }

    /** Whether only what matters is printed. */
    boolean quiet() {
        return Options.isOn(quiet);
    }
}
