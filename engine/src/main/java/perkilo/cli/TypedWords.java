package perkilo.cli;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * The words that were typed, as the commands know them: {@code help cost} becomes {@code cost --help}, and a workbook
 * without a command is checked and costed.
 *
 * @param arguments for the command line library
 * @param command the command that was typed; null if none was
 * @param isWorkbookAlone whether a workbook was typed instead of a command
 * @param wrong a message about a command that does not exist; null if nothing is wrong
 */
record TypedWords(
        List<String> arguments,
        @Nullable String command,
        boolean isWorkbookAlone,
        @Nullable String wrong) {

    private static final String DEBUG = "--debug";

    TypedWords {
        arguments = List.copyOf(arguments);
    }

    /** Interprets the first word that is not an option. */
    static TypedWords of(String... typed) {
        int at = typed.length > 0 && typed[0].equals(DEBUG) ? 1 : 0;
        if (at == typed.length || typed[at].startsWith("-")) {
            return new TypedWords(List.of(typed), null, false, null);
        }
        String word = typed[at];
        if (Commands.NAMES.contains(word)) {
            return new TypedWords(List.of(typed), word, false, null);
        }
        return switch (word) {
            case "help" -> help(typed, at);
            case "version" -> new TypedWords(List.of("--version"), null, false, null);
            default -> isWorkbook(word) ? costed(typed, at) : wrong(typed, word);
        };
    }

    private static TypedWords help(String[] typed, int at) {
        if (at + 1 == typed.length) {
            return new TypedWords(List.of("--help"), null, false, null);
        }
        String command = typed[at + 1];
        return Commands.NAMES.contains(command)
                ? new TypedWords(List.of(command, "--help"), command, false, null)
                : wrong(typed, command);
    }

    private static TypedWords costed(String[] typed, int at) {
        List<String> arguments = new ArrayList<>(List.of(typed));
        arguments.add(at, "cost");
        return new TypedWords(arguments, "cost", true, null);
    }

    private static TypedWords wrong(String[] typed, String word) {
        return new TypedWords(List.of(typed), null, false, noCommand(word));
    }

    private static String noCommand(String word) {
        if (isFile(word)) {
            return CommandMessages.fileForCommand(word);
        }
        List<String> near = Guess.near(word, Commands.NAMES);
        return near.isEmpty()
                ? CommandMessages.unknownCommand(word, Commands.NAMES)
                : CommandMessages.misspeltCommand(word, near);
    }

    private static boolean isWorkbook(String word) {
        String name = word.toLowerCase(Locale.ROOT);
        return name.endsWith(".xlsx") || name.endsWith(".xlsm");
    }

    private static boolean isFile(String word) {
        try {
            return Files.isRegularFile(Path.of(word));
        } catch (InvalidPathException noPath) {
            return false;
        }
    }
}
