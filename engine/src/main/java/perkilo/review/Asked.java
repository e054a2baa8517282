package perkilo.review;

import java.util.List;
import perkilo.origin.Origin;

/**
 * A question to a person.
 *
 * @param key tells it apart; the same question has the same key in every run
 * @param where the cell, sheet or file that raises it
 * @param says what is written there; empty if the question quotes it
 * @param text the question
 * @param choices the answers to choose from; others may be typed
 * @param answer the answer as far as there is one; empty for none
 * @param remark what else there is to know, such as {@link #AS_LAST_TIME}; empty for nothing
 */
public record Asked(
        String key, Origin where, String says, String text, List<String> choices, String answer, String remark) {

    /** The remark of a question whose answer was remembered. */
    public static final String AS_LAST_TIME = "as last time";

    public Asked {
        choices = List.copyOf(choices);
    }

    /** A question without an answer. */
    public static Asked of(String key, Origin where, String says, String text, List<String> choices) {
        return new Asked(key, where, says, text, choices, "", "");
    }

    /** The same question with an answer. */
    public Asked answered(String words, String why) {
        return new Asked(key, where, says, text, choices, words, why);
    }

    /** The same question with what is written at its place. */
    public Asked saying(String words) {
        return new Asked(key, where, words, text, choices, answer, remark);
    }

    /** Whether it waits for an answer. */
    public boolean isOpen() {
        return answer.isBlank();
    }
}
