package perkilo.reading.arrange;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import perkilo.reading.table.NumberText;

/** Words in place of a level: for the line that takes the balance, and for lines that are added to effect. */
public final class LevelWords {

    private static final int LONGEST = 60;
    private static final String ENOUGH = "(?:q\\.?\\s*s\\.?\\s*p?\\.?|c\\.?\\s*[sb]\\.?\\s*p?\\.?|q\\.?\\s*b\\.?)";
    private static final Pattern PLAIN = Pattern.compile("(?iu)" + ENOUGH);
    private static final Pattern TO_HUNDRED = Pattern.compile(
            "(?iu)" + ENOUGH + "?\\s*(?:to|ad|add|up to|auf|zu|bis|a|à|hasta|pour|for)?\\s*100(?:[.,]0+)?\\s*%?");
    private static final Pattern REST = Pattern.compile(
            "(?iu)(?:balance|rest|remainder|reste|resto)(?:\\s*(?:to|ad|auf|à|a)\\s*100(?:[.,]0+)?\\s*%?)?");
    private static final Pattern HUNDRED = Pattern.compile("100(?:[.,]0+)?\\s*%?");
    private static final Pattern PH = Pattern.compile("(?iu).*\\bpH\\b.*");
    private static final Pattern ABOUT = Pattern.compile("(?iu)(?:[~≈]|\\b(\\p{L}+)\\.?)\\s*(\\d+(?:[.,]\\d+)?)\\s*%?");
    private static final Pattern BRACKETED = Pattern.compile("[(\\[]\\s*(\\d+(?:[.,]\\d+)?)\\s*%\\s*[)\\]]");
    private static final Pattern ASIDE = Pattern.compile("[(\\[,;].*$|[~≈].*$");

    private LevelWords() {}

    /** Whether a text means the balance to 100 %: {@code q.s.}, {@code ad 100}, {@code qsp 100 %}. */
    public static boolean isBalance(String text) {
        return text.length() <= LONGEST && (PLAIN.matcher(text.strip()).matches() || isToHundred(text));
    }

    /** Whether a text means the balance and nothing else could: it says 100, or that it is the rest. */
    public static boolean isToHundred(String text) {
        String words = text.strip();
        return words.length() <= LONGEST
                && !HUNDRED.matcher(words).matches()
                && (TO_HUNDRED.matcher(words).matches() || REST.matcher(words).matches());
    }

    /** Whether a text means as much as an effect needs: {@code q.s. to pH 5.5}, {@code as needed (ca. 0.2)}. */
    public static boolean isToEffect(String text) {
        String words = text.strip();
        if (words.isEmpty() || words.length() > LONGEST || Character.isDigit(words.charAt(0))) {
            return false;
        }
        String plain = ASIDE.matcher(words).replaceAll("").strip();
        boolean aside = plain.length() < words.length() && PLAIN.matcher(plain).matches();
        return aside || PH.matcher(words).matches() || SheetWords.isToEffect(plain);
    }

    /** The per cent that a text gives as an estimate, such as 0.2 in {@code q.s. to pH (ca. 0.2)}; null if none. */
    public static @Nullable BigDecimal estimate(String text) {
        Matcher about = ABOUT.matcher(text);
        while (about.find()) {
            String word = about.group(1);
            if (word == null || SheetWords.isAbout(word)) {
                return number(about.group(2)).orElse(null);
            }
        }
        Matcher bracketed = BRACKETED.matcher(text);
        return bracketed.find() ? number(bracketed.group(1)).orElse(null) : null;
    }

    private static Optional<BigDecimal> number(String digits) {
        return NumberText.parse(digits) instanceof NumberText.Parsed parsed
                ? Optional.of(parsed.value())
                : Optional.empty();
    }
}
