package perkilo.pricelists;

import java.util.List;

/**
 * An answer that is remembered for a supplier.
 *
 * @param what what it is about: a field of a question, or one of the words of {@link Memory}
 * @param listed the header, name or line that it is about; empty if the whole list is meant
 * @param answer the answer
 * @param how how it was found; empty for a person's own answer
 * @param question what was asked; empty if nothing was
 * @param choices what the answer could be
 * @param layout the headers of the table that it holds for; empty for all tables
 */
record Remembered(
        String what, String listed, String answer, String how, String question, List<String> choices, String layout) {

    Remembered {
        choices = List.copyOf(choices);
    }
}
