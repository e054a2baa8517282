package perkilo.names;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** Keys by which names of items, suppliers, formulas and products are compared. */
public final class Names {

    private static final Pattern SPACES = Pattern.compile("[\\s\\p{Z}\\u200B\\uFEFF]+");

    private static final String MARKS = "_.,;:'\"()[]/\u2018\u2019\u00B4`\u00AE";

    private Names() {}

    /**
     * The key that two spellings of one name share: letters and digits in lower case, with any run of spaces as one.
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

    /**
     * The key that spellings share if they differ only in case, spaces and marks: {@code PEG-8}, {@code PEG 8} and
     * {@code peg8}. Numbers separated by a mark stay separate, so that {@code 1,2} is not 12.
     *
     * @param name as typed
     */
    public static String withoutMarks(String name) {
        String key = key(name);
        StringBuilder bare = new StringBuilder(key.length());
        char mark = 0;
        for (int at = 0; at < key.length(); at++) {
            char letter = key.charAt(at);
            if (isMark(letter)) {
                mark = mark == 0 || mark == ' ' ? markBetweenNumbers(letter) : mark;
                continue;
            }
            boolean betweenNumbers =
                    bare.length() > 0 && Character.isDigit(bare.charAt(bare.length() - 1)) && Character.isDigit(letter);
            if (mark != 0 && betweenNumbers) {
                bare.append(mark);
            }
            bare.append(letter);
            mark = 0;
        }
        return bare.toString();
    }

    private static boolean isMark(char letter) {
        return letter == ' ' || Character.getType(letter) == Character.DASH_PUNCTUATION || MARKS.indexOf(letter) >= 0;
    }

    private static char markBetweenNumbers(char mark) {
        return mark == '.' || mark == ',' || mark == '/' ? mark : ' ';
    }

    private enum Typing {
        IS_KEY,
        /** Whether lower case is all that is needed: the name is printable ASCII with single spaces. */
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
