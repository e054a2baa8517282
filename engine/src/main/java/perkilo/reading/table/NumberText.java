package perkilo.reading.table;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Numbers as people write them in text: {@code 12,50 €}, {@code 1.250,00}, {@code 1 250.5 kg}, {@code $ 3}.
 *
 * <p>A single point or comma with three digits after it may separate thousands or decimals, so the number is
 * {@link Ambiguous}. Two different marks, or the same mark twice, make it clear.
 */
public sealed interface NumberText {

    /**
     * A number, with the words beside it.
     *
     * @param value exactly as written
     * @param words the words before or after it, such as {@code €} or {@code kg}; empty if there are none
     */
    record Parsed(BigDecimal value, String words) implements NumberText {}

    /** A number that can be read in two ways, with the words beside it. */
    record Ambiguous(BigDecimal large, BigDecimal small, String words) implements NumberText {}

    /** No number at all. */
    record NotANumber() implements NumberText {}

    /** What a text says. */
    static NumberText parse(String text) {
        return Parser.parse(text);
    }

    /** The reading of one text. */
    final class Parser {

        private static final Pattern SHAPE =
                Pattern.compile("^([^\\d.,+\\-−]*)([+\\-−]?)\\s*(\\d[\\d.,'’ ]*|[.,]\\d+)(.*)$", Pattern.DOTALL);
        private static final Pattern SIGN_FIRST =
                Pattern.compile("^([+\\-−])\\s*([^\\d.,+\\-−\\s]+)\\s*(\\d.*)$", Pattern.DOTALL);
        private static final Pattern GROUPED_BY_SPACE = Pattern.compile("\\d{1,3}([ '’])\\d{3}(\\1\\d{3})*([.,]\\d+)?");
        private static final Pattern EXPONENT = Pattern.compile("\\d+(\\.\\d+)?[eE][+-]?\\d{1,2}");
        private static final Pattern GROUPED_BY_POINT = Pattern.compile("\\d{1,3}(\\.\\d{3})+(,\\d+)?");
        private static final Pattern GROUPED_BY_COMMA = Pattern.compile("\\d{1,3}(,\\d{3})+(\\.\\d+)?");
        private static final Pattern TWO_MEANINGS = Pattern.compile("[1-9]\\d{0,2}[.,]\\d{3}");
        private static final Pattern PLAIN = Pattern.compile("\\d*[.,]?\\d+|\\d+[.,]?");
        /** A dash in place of cents: {@code 412.-}. */
        private static final Pattern NO_CENTS = Pattern.compile("(?<=\\d)[.,]\\s?[-–—]{1,2}(?!\\d)");

        private static final int LONGEST = 40;

        private Parser() {}

        private static NumberText parse(String raw) {
            String text = raw.replaceAll("[\\s\\p{Z}]+", " ").strip();
            if (text.indexOf(".-") > 0 || text.indexOf('–') > 0 || text.indexOf('—') > 0 || text.indexOf(",-") > 0) {
                text = NO_CENTS.matcher(text).replaceAll("");
            }
            if (EXPONENT.matcher(text).matches()) {
                return new Parsed(new BigDecimal(text), "");
            }
            Matcher signFirst = SIGN_FIRST.matcher(text);
            if (signFirst.matches()) {
                text = signFirst.group(2) + " " + signFirst.group(1) + signFirst.group(3);
            }
            Matcher shape = SHAPE.matcher(text);
            if (!shape.matches() || text.length() > LONGEST) {
                return new NotANumber();
            }
            String before = shape.group(1).strip();
            String digits = shape.group(3).strip();
            String after = shape.group(4).strip();
            if (after.matches(".*\\d.*") || startsInsideWord(shape.group(3), shape.group(4))) {
                return new NotANumber();
            }
            boolean negative = shape.group(2).matches("[-−]");
            return signed(number(digits, joined(before, after)), negative);
        }

        private static String joined(String before, String after) {
            boolean apart = !before.isEmpty() && !after.isEmpty() && !after.startsWith("/");
            return apart ? before + " " + after : before + after;
        }

        /** Whether a letter O or l follows a digit at once, as in {@code 12,5O}. */
        private static boolean startsInsideWord(String digits, String rest) {
            return !digits.endsWith(" ")
                    && rest.matches("(?s)[OolI].*")
                    && rest.strip().length() == 1
                    && !rest.strip().equals("l");
        }

        private static NumberText number(String digits, String words) {
            if (TWO_MEANINGS.matcher(digits).matches()) {
                String point = digits.replace(',', '.');
                return new Ambiguous(new BigDecimal(digits.replaceAll("[.,]", "")), new BigDecimal(point), words);
            }
            String spaceless = digits;
            if (digits.matches(".*[ '’].*")) {
                if (!GROUPED_BY_SPACE.matcher(digits).matches()) {
                    return new NotANumber();
                }
                spaceless = digits.replaceAll("[ '’]", "");
            } else if (GROUPED_BY_POINT.matcher(digits).matches() && !startsWithZero(digits)) {
                return new Parsed(new BigDecimal(digits.replace(".", "").replace(',', '.')), words);
            } else if (GROUPED_BY_COMMA.matcher(digits).matches() && !startsWithZero(digits)) {
                return new Parsed(new BigDecimal(digits.replace(",", "")), words);
            }
            if (!PLAIN.matcher(spaceless).matches()) {
                return new NotANumber();
            }
            return new Parsed(new BigDecimal(spaceless.replace(',', '.')), words);
        }

        private static boolean startsWithZero(String digits) {
            return digits.startsWith("0");
        }

        private static NumberText signed(NumberText number, boolean negative) {
            if (!negative) {
                return number;
            }
            if (number instanceof Parsed parsed) {
                return new Parsed(parsed.value().negate(), parsed.words());
            }
            return number instanceof Ambiguous two
                    ? new Ambiguous(two.large().negate(), two.small().negate(), two.words())
                    : number;
        }
    }
}
