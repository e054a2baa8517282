package perkilo.reading.arrange;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import perkilo.layouts.ListWords;

/** Headings of phases: {@code Phase A (70 °C)}, {@code A – Water phase}, {@code Fettphase}, {@code Phase aqueuse}. */
final class PhaseText {

    private static final Pattern TEMPERATURE = Pattern.compile("(?iu)(\\d{2,3})(?:\\s*[-–]\\s*\\d{2,3})?\\s*°\\s*C?");
    private static final Pattern LABELLED = Pattern.compile(
            "(?iu)(\\p{L}+)\\.?\\s*[-–:]?\\s*([A-Z]\\d?|\\d{1,2}|[IVX]{1,4})(?:\\s*$|[\\s:–—.,(\\-].*)");
    private static final Pattern LETTER = Pattern.compile("([A-Z]\\d?)\\s*[–—:.)\\-]\\s*(\\p{L}.*)");
    private static final Pattern ALONE = Pattern.compile("[A-H]\\d?[.:)]?");
    private static final Pattern WORDS = Pattern.compile("(?iu).*(?:phase|fase)\\b.*|cool[- ]?down.*");
    private static final int LONGEST = 60;

    private PhaseText() {}

    /** The name of the phase that a text heads: its letter if it has one; empty if it heads none. */
    static Optional<String> name(String heading) {
        String text = TEMPERATURE
                .matcher(heading)
                .replaceAll(" ")
                .replaceAll("\\(\\s*\\)", " ")
                .strip();
        if (text.isEmpty() || text.length() > LONGEST) {
            return Optional.empty();
        }
        Matcher labelled = LABELLED.matcher(text);
        if (labelled.matches() && SheetWords.isPhase(labelled.group(1))) {
            return Optional.of(labelled.group(2));
        }
        if (ALONE.matcher(text).matches()) {
            return Optional.of(text.replaceAll("[.:)]$", ""));
        }
        boolean words = WORDS.matcher(text).matches();
        Matcher letter = LETTER.matcher(text);
        if (words && letter.matches()) {
            return Optional.of(letter.group(1));
        }
        return words && !ListWords.is("total", text) ? Optional.of(text.replaceAll("[:\\s]+$", "")) : Optional.empty();
    }

    /** The temperature in a heading, in °C; null if it has none. */
    static @Nullable BigDecimal temperature(String heading) {
        Matcher found = TEMPERATURE.matcher(heading);
        return found.find() ? new BigDecimal(found.group(1)) : null;
    }
}
