package perkilo.layouts;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One number in a text, with the words around it: {@code 1.250,00 €/kg}.
 *
 * @param digits the number as typed, with its marks
 * @param words the text before and after it
 */
public record NumberWords(String digits, String words) {

    private static final int LONGEST = 80;
    private static final Pattern SHAPE = Pattern.compile(
            "([^\\d]*?)([+\\-−]?\\d(?:[\\d.,'’]|[ \\u00A0\\u202F\\u2009](?=\\d{3}(?!\\d)))*|[.,]\\d+)(.*)");
    private static final Pattern LAST_MARKS = Pattern.compile("[.,'’]+$");

    /** A dash in the place of cents, {@code 412.-}, or of francs, {@code –.50}. */
    private static final Pattern DASHED_END = Pattern.compile("(?<=\\d)([.,])[-–—−]{1,2}(?!\\d)");

    private static final Pattern DASHED_BEGIN = Pattern.compile("[-–—−]{1,2}(?=[.,]\\d{2}(?!\\d))");

    private static boolean mayBeDashed(String text) {
        for (int at = 0; at < text.length(); at++) {
            char letter = text.charAt(at);
            if (letter == '-' || letter == '–' || letter == '—' || letter == '−') {
                return true;
            }
        }
        return false;
    }

    /** The parts of a text; empty if it holds no number, or is too long to be one. */
    public static Optional<NumberWords> of(String text) {
        String tidy = text.length() > 2 * LONGEST ? text : ListWords.tidy(text);
        if (tidy.length() > LONGEST) {
            return Optional.empty();
        }
        if (mayBeDashed(tidy)) {
            tidy = DASHED_BEGIN
                    .matcher(DASHED_END.matcher(tidy).replaceAll(dash -> dash.group(1) + "00"))
                    .replaceAll("0");
        }
        Matcher shape = SHAPE.matcher(tidy);
        if (!shape.matches()) {
            return Optional.empty();
        }
        String digits = LAST_MARKS.matcher(shape.group(2)).replaceAll("").replaceAll("[ \\u202F]", " ");
        String after = shape.group(3).strip();
        String before = shape.group(1).strip();
        boolean joined = before.isEmpty() || after.isEmpty() || after.startsWith("/");
        return Optional.of(new NumberWords(digits, joined ? before + after : before + " " + after));
    }
}
