package perkilo.sheet;

import java.util.List;

/** The answers that a cell offers in a drop-down list. */
public sealed interface Choices {

    /** The longest list that office suites read inside a sheet's rule, commas included. */
    int LONGEST = 255;

    /** Whether answers fit into the rule itself: short enough, and without the comma that parts them. */
    static boolean fit(List<String> words) {
        int length = words.size() - 1;
        for (String word : words) {
            length += word.replace("\"", "\"\"").length();
            if (word.indexOf(',') >= 0 || !word.equals(word.strip())) {
                return false;
            }
        }
        return length <= LONGEST;
    }

    /**
     * Answers that are named in the rule.
     *
     * @param words few and short; see {@link #fit}
     */
    record Words(List<String> words) implements Choices {

        public Words {
            words = List.copyOf(words);
            if (!fit(words)) {
                throw new IllegalArgumentException("too long for a drop-down list: " + words);
            }
        }
    }

    /**
     * Answers that are listed on a sheet.
     *
     * @param sheet the name that the sheet was built with
     * @param column from zero; the list begins in the first row
     * @param count how many there are, at least one
     */
    record Listed(String sheet, int column, int count) implements Choices {}
}
