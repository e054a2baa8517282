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

/** A command: its name, its options and parameters, and its work. */
abstract class Command implements Callable<Integer> {

    private final CommandSpec spec = CommandSpec.wrapWithoutInspection(this);

    /**
     * A command with the options for help and version only.
     *
     * @param description its help text, one paragraph each
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

    /** Runs the command and returns its exit code. */
    @Override
    public abstract Integer call() throws IOException;

    /** The day of today, used where no date is set. */
    static final LocalDate today() {
        return LocalDate.now(ZoneId.systemDefault());
    }

    /** The exception to throw for a wrong command line. */
    final ParameterException wrong(String text) {
        return new ParameterException(spec.commandLine(), text);
    }
}
