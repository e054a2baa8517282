package perkilo.reading;

import java.util.List;

/** What a person reads about the facts of a material. */
final class MaterialMessages {

    private MaterialMessages() {}

    static String limitsCrossed(String highest, String lowest, String where) {
        return highest + " is below " + lowest + " in " + where + ". Correct one of them.";
    }

    static String noChoice(String column, String typed, List<String> choices) {
        return "\"" + typed + "\" is not a word for " + column + ", so it counts as not known. Type one of these: "
                + String.join(", ", choices) + ".";
    }

    static String notAShare(String word, String example) {
        return "\"" + word + "\" is not a name with a percentage. Type it like these: " + example + ".";
    }
}
