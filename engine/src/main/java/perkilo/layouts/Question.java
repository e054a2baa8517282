package perkilo.layouts;

import java.util.List;
import perkilo.origin.Origin;

/**
 * A question about what a list does not say clearly; a person answers it on a review.
 *
 * @param field what the answer is about, such as {@code breaks in}
 * @param key for {@code columns}: the header; empty elsewhere
 * @param where the cell that raises it
 * @param text the question, from {@link QuestionMessages}
 * @param choices what the answer can be
 */
public record Question(String field, String key, Origin where, String text, List<String> choices) {

    public Question {
        choices = List.copyOf(choices);
    }

    /** A question that one answer settles for the whole list. */
    public static Question of(String field, Origin where, String text, String... choices) {
        return new Question(field, "", where, text, List.of(choices));
    }

    /**
     * The question which of two numbers a text means.
     *
     * @param digits the number in the text, one that can mean two
     */
    public static Question decimals(Origin where, String text, String digits) {
        return of(
                Mapping.DECIMALS,
                where,
                QuestionMessages.decimals(
                        text,
                        DecimalMark.POINT.number(digits).orElseThrow(),
                        DecimalMark.COMMA.number(digits).orElseThrow()),
                "point",
                "comma");
    }

    /** Whether the answer may give the first day of the list's prices. */
    public boolean isAboutFirstDay() {
        return field.equals(Mapping.FIRST_DAY) || field.startsWith(TitleFacts.DATE_AFTER);
    }

    /** The question on one line, with the answers to choose from. */
    public String sentence() {
        return choices.isEmpty() ? text : text + " " + QuestionMessages.choices(choices);
    }
}
