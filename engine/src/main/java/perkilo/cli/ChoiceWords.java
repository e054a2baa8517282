package perkilo.cli;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Stack;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import perkilo.desk.Choice;
import perkilo.desk.SwapAnswer;
import picocli.CommandLine.IParameterConsumer;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/**
 * The value of {@code --apply}, which names a swap or a blend: {@code 3} or {@code swap 3}, {@code blend 2}, or
 * {@code blend} where there is only one. {@code blend 2} may also be typed as two words without quotation marks.
 */
final class ChoiceWords implements IParameterConsumer {

    private static final Pattern TYPED = Pattern.compile("(?:(swap|blend)[\\s\\-]*)?(\\d{1,6})|blend");

    /** The choice that is typed, in upper or lower case; empty for any other text. */
    static Optional<Choice> typed(String text) {
        Matcher typed = TYPED.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!typed.matches()) {
            return Optional.empty();
        }
        boolean blend = typed.group(2) == null || "blend".equals(typed.group(1));
        return Optional.of(new Choice(
                blend,
                typed.group(2) == null ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(typed.group(2)))));
    }

    /** The message for a choice that is not among the swaps or blends that were found. */
    static String missing(SwapAnswer.NoSuchChoice answer) {
        Choice choice = answer.choice();
        int count = answer.count();
        String word = choice.blend() ? "blend" : "swap";
        if (count == 0) {
            return CommandMessages.nothingToApply(word);
        }
        if (choice.number().isEmpty()) {
            return CommandMessages.severalBlends(count);
        }
        return CommandMessages.noSuchChoice(word, count, choice.number().getAsInt());
    }

    @Override
    public void consumeParameters(Stack<String> arguments, ArgSpec option, CommandSpec spec) {
        if (option.getValue() != null) {
            throw new ParameterException(spec.commandLine(), CommandMessages.onlyOnce("--apply"));
        }
        if (arguments.isEmpty()) {
            throw new ParameterException(spec.commandLine(), CommandMessages.noChoice());
        }
        String text = arguments.pop();
        boolean isKind = text.equalsIgnoreCase("blend") || text.equalsIgnoreCase("swap");
        if (isKind && !arguments.isEmpty() && arguments.peek().matches("\\d+")) {
            text = text + " " + arguments.pop();
        }
        String given = text;
        option.setValue(typed(given)
                .orElseThrow(() -> new ParameterException(spec.commandLine(), CommandMessages.badChoice(given))));
    }
}
