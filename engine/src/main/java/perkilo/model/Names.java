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
        return switch (typing(name)) {
            case IS_KEY -> name;
            case PLAIN -> name.toLowerCase(Locale.ROOT);
            case OTHER -> normalized(name);
        };
    }

    private static String normalized(String name) {
        return SPACES.matcher(Normalizer.normalize(name, Normalizer.Form.NFKC))
                .replaceAll(" ")
                .strip()
                .toLowerCase(Locale.ROOT);
    }

    private enum Typing {
        IS_KEY,
        /** Small letters are all that it takes: printable ASCII with single spaces inside. */
        PLAIN,
        OTHER
    }

    private static Typing typing(String name) {
        char before = ' ';
        Typing typing = Typing.IS_KEY;
        for (int at = 0; at < name.length(); at++) {
            char letter = name.charAt(at);
            if (letter < ' ' || letter > '~' || (letter == ' ' && before == ' ')) {
                return Typing.OTHER;
            }
            if (letter >= 'A' && letter <= 'Z') {
                typing = Typing.PLAIN;
            }
            before = letter;
        }
        return name.endsWith(" ") ? Typing.OTHER : typing;
    }
}
