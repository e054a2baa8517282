package perkilo.cli;

import picocli.CommandLine.Option;

/** How a command prints its answer, as every command takes it. */
final class PrintOptions {

    @Option(names = "--json", description = "Print the answer as JSON, and nothing else, on standard output.")
    private boolean json;

    @Option(
            names = {"-q", "--quiet"},
            description = "Print no table and no notes; warnings and errors stay.")
    private boolean quiet;

    /** Whether the answer is printed as JSON. */
    boolean json() {
        return json;
    }

    /** Whether only what matters is printed. */
    boolean quiet() {
        return quiet;
    }
}
