package perkilo.cli;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says in one line what is wrong with a command line, and how to type it instead. */
final class WrongUsage implements IParameterExceptionHandler {

    @Override
    public int handleParseException(ParameterException wrong, String[] arguments) {
        PrintWriter err = wrong.getCommandLine().getErr();
        err.println(sentence(wrong, wrong.getCommandLine().getCommandSpec()));
        err.flush();
        return Exit.USAGE;
    }

    private static String sentence(ParameterException wrong, CommandSpec command) {
        if (wrong instanceof UnmatchedArgumentException unmatched) {
            return unmatched(unmatched.getUnmatched(), command);
        }
        if (wrong instanceof MissingParameterException missing
                && !missing.getMissing().isEmpty()) {
            List<String> unknown = wrong.getCommandLine().getUnmatchedArguments();
            return unknown.isEmpty() ? missing(missing.getMissing().get(0), command) : unmatched(unknown, command);
        }
        if (wrong.getArgSpec() instanceof OptionSpec option && wrong.getValue() != null) {
            String expected = expected(option);
            if (!expected.isEmpty()) {
                return "%s takes %s, but was given \"%s\".".formatted(option.longestName(), expected, wrong.getValue());
            }
        }
        return String.valueOf(wrong.getMessage());
    }

    /** What an option takes, with an example; empty where its own message says it. */
    private static String expected(OptionSpec option) {
        String name = option.longestName();
        if (option.type() == LocalDate.class) {
            return "a day typed as year-month-day, such as %s 2026-11-20".formatted(name);
        }
        if (option.type() == int.class) {
            String label = option.paramLabel().toLowerCase(Locale.ROOT);
            String counted = label.length() > 1 ? " of " + label : "";
            return "a whole number%s, such as %s %s".formatted(counted, name, option.defaultValue());
        }
        return "";
    }

    private static String missing(ArgSpec missing, CommandSpec command) {
        if (missing instanceof OptionSpec option) {
            return "%s needs a value behind it: %s %s"
                    .formatted(option.longestName(), option.longestName(), option.paramLabel());
        }
        String name = command.qualifiedName();
        return "%s needs a workbook, as in: %s book.xlsx".formatted(name, name);
    }

    private static String unmatched(List<String> unmatched, CommandSpec command) {
        String first = unmatched.get(0);
        for (String one : unmatched) {
            if (one.startsWith("-")) {
                return noOption(one, command);
            }
        }
        List<String> labels =
                command.positionalParameters().stream().map(ArgSpec::paramLabel).toList();
        return "%s takes %s alone, so \"%s\" is too much."
                .formatted(command.qualifiedName(), String.join(" and ", labels), first);
    }

    private static String noOption(String typed, CommandSpec command) {
        int value = typed.indexOf('=');
        String name = value < 0 ? typed : typed.substring(0, value);
        List<String> known = new ArrayList<>();
        command.options().forEach(option -> known.add(option.longestName()));
        List<String> near = Guess.near(name, known);
        if (!near.isEmpty()) {
            return "There is no option %s for %s. Did you mean %s?"
                    .formatted(name, command.qualifiedName(), String.join(" or ", near));
        }
        return command.parent() == null
                ? "There is no option %s before a command. Type it after the command, as in: perkilo cost book.xlsx %s"
                        .formatted(name, name)
                : "There is no option %s for %s. %s --help lists the options."
                        .formatted(name, command.qualifiedName(), command.qualifiedName());
    }
}
