package perkilo.layouts;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import perkilo.reading.table.DateText;

/**
 * Dates in lists, in words of three languages.
 *
 * <p>With points the day comes first: {@code 03.04.2026} is the third of April in every country that writes it so
 * (common practice, no source). With slashes the order is not known if both numbers can be months.
 */
public final class ListDates {

    private static final Pattern DATE = Pattern.compile(
            "\\d{4}-\\d{2}-\\d{2}|\\d{1,2}[./-]\\d{1,2}[./-]\\d{4}|\\d{1,2}(?:\\.|er|st|nd|rd|th)?\\s+\\p{L}{3,9}\\.?,?\\s+\\d{4}"
                    + "|\\p{L}{3,9}\\.?\\s+\\d{1,2},\\s*\\d{4}");
    private static final Pattern DOTTED = Pattern.compile("(\\d{1,2})\\.(\\d{1,2})\\.(\\d{4})");
    private static final Pattern WORD = Pattern.compile("\\p{L}{3,9}");
    private static final Map<String, String> MONTHS = Map.ofEntries(
            Map.entry("januar", "January"),
            Map.entry("janner", "January"),
            Map.entry("janvier", "January"),
            Map.entry("februar", "February"),
            Map.entry("fevrier", "February"),
            Map.entry("marz", "March"),
            Map.entry("mars", "March"),
            Map.entry("avril", "April"),
            Map.entry("mai", "May"),
            Map.entry("juni", "June"),
            Map.entry("juin", "June"),
            Map.entry("juli", "July"),
            Map.entry("juillet", "July"),
            Map.entry("aout", "August"),
            Map.entry("septembre", "September"),
            Map.entry("oktober", "October"),
            Map.entry("octobre", "October"),
            Map.entry("novembre", "November"),
            Map.entry("dezember", "December"),
            Map.entry("decembre", "December"));

    /**
     * What a text of one date says.
     *
     * @param day null if it can be two days
     * @param ambiguous whether it can be two days
     */
    public record Read(@Nullable LocalDate day, boolean ambiguous) {}

    /**
     * A date in a longer text.
     *
     * @param read the date
     * @param before the text between it and the date before it
     */
    public record Placed(Read read, String before) {}

    private final @Nullable Boolean dayFirst;

    /**
     * Dates of one supplier.
     *
     * @param order {@code day first} or {@code month first}, for dates with slashes; empty if a person has not said
     */
    public ListDates(Optional<String> order) {
        this.dayFirst = order.map(words -> words.toLowerCase(Locale.ROOT).startsWith("day"))
                .orElse(null);
    }

    /** All dates in a text, from left to right. */
    public List<Placed> all(String text) {
        List<Placed> found = new ArrayList<>();
        int end = 0;
        for (MatchResult date : DATE.matcher(text).results().toList()) {
            String before = text.substring(end, date.start());
            one(date.group()).ifPresent(read -> found.add(new Placed(read, before)));
            end = date.end();
        }
        return found;
    }

    /** The date that a text means; empty if it is not a date. */
    public Optional<Read> one(String text) {
        String tidy = text.strip();
        var dotted = DOTTED.matcher(tidy);
        if (dotted.matches()) {
            return day(dotted.group(3), dotted.group(2), dotted.group(1));
        }
        String english = WORD.matcher(tidy)
                .replaceAll(word -> MONTHS.getOrDefault(ListWords.key(word.group()), word.group()))
                .replaceAll("(?<=\\d)(?:\\.|er|st|nd|rd|th)(?=\\s)", "");
        DateText read = DateText.parse(english);
        if (read instanceof DateText.Parsed parsed) {
            return Optional.of(new Read(parsed.day(), false));
        }
        if (read instanceof DateText.Ambiguous two) {
            boolean known = dayFirst != null;
            LocalDate day = Boolean.TRUE.equals(dayFirst) ? two.one() : two.other();
            return Optional.of(new Read(known ? day : null, !known));
        }
        return Optional.empty();
    }

    private static Optional<Read> day(String year, String month, String day) {
        try {
            return Optional.of(new Read(
                    LocalDate.of(Integer.parseInt(year), Integer.parseInt(month), Integer.parseInt(day)), false));
        } catch (DateTimeException noSuchDay) {
            return Optional.empty();
        }
    }
}
