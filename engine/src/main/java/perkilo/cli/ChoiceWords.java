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
 * Which swap or blend is to be carried out, as a person types it: {@code 3} or {@code swap 3}, {@code blend 2}, or
 * {@code blend} where there is one. {@code blend 2} may also be typed as two words without quotation marks.
 */
final class ChoiceWords implements IParameterConsumer {

    private static final Pattern TYPED = Pattern.compile("(?:(swap|blend)[\\s\\-]*)?(\\d{1,6})|blend");

    /** What is typed, in upper or lower case; empty for what is neither. */
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

    /** What to say where the choice is none of what was found. */
    static String missing(SwapAnswer.NoSuchChoice answer) {
        Choice choice = answer.choice();
        int count = answer.count();
        String word = choice.blend() ? "blend" : "swap";
        if (count == 0) {
            return "--apply: no cheaper %s was found".formatted(word);
        }
        if (choice.number().isEmpty()) {
            return "--apply: there are %d blends; say which one, from \"blend 1\" to \"blend %d\""
                    .formatted(count, count);
        }
        return "--apply takes a %s from 1 to %d, but was given %d"
                .formatted(word, count, choice.number().getAsInt());
    }

    @Override
    public void consumeParameters(Stack<String> arguments, ArgSpec option, CommandSpec spec) {
        if (option.getValue() != null) {
            throw new ParameterException(spec.commandLine(), "--apply should be specified only once");
        }
        if (arguments.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(), "--apply needs a number, or a blend's such as \"blend 2\"");
        }
        String text = arguments.pop();
        boolean isKind = text.equalsIgnoreCase("blend") || text.equalsIgnoreCase("swap");
        if (isKind && !arguments.isEmpty() && arguments.peek().matches("\\d+")) {
            text = text + " " + arguments.pop();
        }
        String given = text;
        option.setValue(typed(given)
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(),
                        "--apply takes the number of a swap, such as 3, or of a blend, such as \"blend 2\", but was given \"%s\""
                                .formatted(given))));
    }
}
