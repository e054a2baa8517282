package perkilo.cli;

import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.concurrent.Callable;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParameterException;

/** A command: what it is called, what may be said with it, and what it does. */
abstract class Command implements Callable<Integer> {

    private final CommandSpec spec = CommandSpec.wrapWithoutInspection(this);

    /**
     * A command with nothing to say but how to get help.
     *
     * @param description a paragraph each
     */
    Command(String name, String... description) {
        spec.name(name).versionProvider(new Version());
        spec.usageMessage().description(description);
        takes(
                Options.flagBuilder("Show this help message and exit.", "-h", "--help")
                        .usageHelp(true)
                        .build(),
                Options.flagBuilder("Print version information and exit.", "-V", "--version")
                        .versionHelp(true)
                        .build());
    }

    /** The command as the command line library knows it. */
    final CommandSpec spec() {
        return spec;
    }

    /** Adds options and parameters. */
    final void takes(ArgSpec... options) {
        for (ArgSpec option : options) {
            if (option instanceof OptionSpec named) {
                spec.addOption(named);
            } else {
                spec.addPositional((PositionalParamSpec) option);
            }
        }
    }

    /** Does it, and gives the exit code back. */
    @Override
    public abstract Integer call() throws IOException;

    /** The day that holds where none is set. */
    static final LocalDate today() {
        return LocalDate.now(ZoneId.systemDefault());
    }

    /** What is to be thrown where the command line is wrong. */
    final ParameterException wrong(String text) {
        return new ParameterException(spec.commandLine(), text);
    }
}
