package perkilo.cli;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Prints in one line what is wrong with a command line, and how to type it correctly. */
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
        if (wrong instanceof OverwrittenOptionException twice && twice.getOverwritten() instanceof OptionSpec option) {
            return CommandMessages.onlyOnce(option.longestName());
        }
        if (wrong instanceof MissingParameterException missing
                && !missing.getMissing().isEmpty()) {
            List<String> unknown = wrong.getCommandLine().getUnmatchedArguments();
            return unknown.isEmpty() ? missing(missing.getMissing().get(0), command) : unmatched(unknown, command);
        }
        if (wrong.getArgSpec() instanceof OptionSpec option && wrong.getValue() != null) {
            String sentence = badValue(option, wrong.getValue());
            if (!sentence.isEmpty()) {
                return sentence;
            }
        }
        return String.valueOf(wrong.getMessage());
    }

    /** What an option takes, with an example; empty where its own message says it. */
    private static String badValue(OptionSpec option, String typed) {
        String name = option.longestName();
        if (option.type() == LocalDate.class) {
            return looksLikeADay(typed) ? CommandMessages.noSuchDay(name, typed) : CommandMessages.notADay(name, typed);
        }
        if (option.type() == int.class) {
            String label = option.paramLabel().toLowerCase(Locale.ROOT);
            String unit = label.length() > 1 ? label : "";
            return CommandMessages.notAWholeNumber(name, unit, example(option), typed);
        }
        return "";
    }

    /** What may be typed for a number: the usual value if there is one. */
    private static String example(OptionSpec option) {
        return option.defaultValue() == null ? "30" : option.defaultValue();
    }

    /** Whether a text has the form of a day, such as {@code 2026-02-30}. */
    private static boolean looksLikeADay(String typed) {
        if (typed.length() != "2026-02-30".length()) {
            return false;
        }
        for (int at = 0; at < typed.length(); at++) {
            boolean dash = at == 4 || at == 7;
            char letter = typed.charAt(at);
            if (dash ? letter != '-' : letter < '0' || letter > '9') {
                return false;
            }
        }
        return true;
    }

    private static String missing(ArgSpec missing, CommandSpec command) {
        if (missing instanceof OptionSpec option) {
            return CommandMessages.noValue(option.longestName(), option.paramLabel());
        }
        return CommandMessages.noWorkbook(command.qualifiedName());
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
        return labels.isEmpty()
                ? CommandMessages.unknownCommand(first, Commands.NAMES)
                : CommandMessages.tooMany(first, command.qualifiedName(), labels);
    }

    private static String noOption(String typed, CommandSpec command) {
        int value = typed.indexOf('=');
        String name = value < 0 ? typed : typed.substring(0, value);
        List<String> known = new ArrayList<>();
        command.options().forEach(option -> known.add(option.longestName()));
        List<String> near = Guess.near(name, known);
        if (!near.isEmpty()) {
            return CommandMessages.misspeltOption(name, command.qualifiedName(), near);
        }
        return command.parent() == null
                ? beforeCommand(name, command)
                : CommandMessages.unknownOption(name, command.qualifiedName());
    }

    private static String beforeCommand(String name, CommandSpec whole) {
        Set<String> known = new LinkedHashSet<>();
        whole.subcommands()
                .values()
                .forEach(
                        one -> one.getCommandSpec().options().forEach(option -> known.addAll(List.of(option.names()))));
        List<String> near = known.contains(name) ? List.of(name) : Guess.near(name, known);
        return CommandMessages.optionBeforeCommand(name, near.isEmpty() ? "" : near.get(0));
    }
}
