package perkilo.model;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** How names of items, suppliers, formulas and products are compared. */
public final class Names {

    private static final Pattern SPACES = Pattern.compile("[\\s\\p{Z}\\u200B\\uFEFF]+");

    private Names() {}

    /**
     * What two spellings of one name have in common: letters and digits in lower case, spaces of any kind and number as
     * one.
     *
     * @param name as typed
     */
    public static String key(String name) {
        return isKey(name) ? name : normalized(name);
    }

    private static String normalized(String name) {
        return SPACES.matcher(Normalizer.normalize(name, Normalizer.Form.NFKC))
                .replaceAll(" ")
                .strip()
                .toLowerCase(Locale.ROOT);
    }

    /** Whether a name is plain enough to be its own key: printable ASCII, nothing in capitals, single spaces inside. */
    private static boolean isKey(String name) {
        char before = ' ';
        for (int at = 0; at < name.length(); at++) {
            char letter = name.charAt(at);
            boolean plain = letter >= ' ' && letter <= '~' && (letter < 'A' || letter > 'Z');
            if (!plain || (letter == ' ' && before == ' ')) {
                return false;
            }
            before = letter;
        }
        return !name.endsWith(" ");
    }
}
