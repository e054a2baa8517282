package perkilo.pricelists;

import java.util.List;
import perkilo.origin.Origin;

/**
 * Something that a list does not say clearly; a person answers it in the supplier's mapping.
 *
 * @param field where in the mapping the answer goes, such as {@code breaks in}
 * @param key for {@code columns}: the header; empty elsewhere
 * @param where the cell that raises it
 * @param text what is not clear
 * @param choices what the answer can be
 */
public record Question(String field, String key, Origin where, String text, List<String> choices) {

    public Question {
        choices = List.copyOf(choices);
    }

    /** A question about the list as a whole. */
    static Question of(String field, Origin where, String text, String... choices) {
        return new Question(field, "", where, text, List.of(choices));
    }

    /** The question on one line. */
    public String sentence() {
        String place = key.isEmpty() ? "\"" + field + "\"" : "\"" + field + "\" at \"" + key + "\"";
        return text + "; say in the mapping under " + place + ": " + String.join(" or ", choices);
    }
}
