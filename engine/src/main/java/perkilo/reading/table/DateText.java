package perkilo.reading.table;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Dates as people write them in text. {@code 03/04/2026} can be two days, and is {@link Ambiguous}. */
public sealed interface DateText {

    /** A day. */
    record Parsed(LocalDate day) implements DateText {}

    /** Two days that a text can mean. */
    record Ambiguous(LocalDate one, LocalDate other) implements DateText {}

    /** No day. */
    record NotADate() implements DateText {}

    /** What a text says. */
    static DateText parse(String text) {
        try {
            return Parser.parse(text.strip());
        } catch (DateTimeException noSuchDay) {
            return new NotADate();
        }
    }

    /** The reading of one text. */
    final class Parser {

        private static final Pattern YEAR_FIRST =
                Pattern.compile("(\\d{4})[-/.](\\d{1,2})[-/.](\\d{1,2})(?:[T ]\\d{2}:\\d{2}.*)?");
        private static final Pattern YEAR_LAST = Pattern.compile("(\\d{1,2})([-/.])(\\d{1,2})\\2(\\d{4})");
        private static final Pattern DAY_MONTH =
                Pattern.compile("(\\d{1,2})[\\s.-]+([A-Za-z]{3,9})\\.?,?[\\s-]+(\\d{4})");
        private static final Pattern MONTH_DAY = Pattern.compile("([A-Za-z]{3,9})\\.?\\s+(\\d{1,2}),?\\s+(\\d{4})");
        private static final List<String> MONTHS = List.of(
                "january",
                "february",
                "march",
                "april",
                "may",
                "june",
                "july",
                "august",
                "september",
                "october",
                "november",
                "december");
        private static final int MONTHS_OF_YEAR = 12;

        private Parser() {}

        private static DateText parse(String text) {
            Matcher iso = YEAR_FIRST.matcher(text);
            if (iso.matches()) {
                return day(iso.group(1), Integer.parseInt(iso.group(2)), iso.group(3));
            }
            Matcher named = DAY_MONTH.matcher(text);
            if (named.matches()) {
                return day(named.group(3), month(named.group(2)), named.group(1));
            }
            Matcher american = MONTH_DAY.matcher(text);
            if (american.matches()) {
                return day(american.group(3), month(american.group(1)), american.group(2));
            }
            Matcher numbers = YEAR_LAST.matcher(text);
            return numbers.matches() ? numbers(numbers) : new NotADate();
        }

        private static DateText numbers(Matcher numbers) {
            int first = Integer.parseInt(numbers.group(1));
            int second = Integer.parseInt(numbers.group(3));
            int year = Integer.parseInt(numbers.group(4));
            if (first > MONTHS_OF_YEAR || first == second) {
                return new Parsed(LocalDate.of(year, second, first));
            }
            if (second > MONTHS_OF_YEAR) {
                return new Parsed(LocalDate.of(year, first, second));
            }
            return new Ambiguous(LocalDate.of(year, second, first), LocalDate.of(year, first, second));
        }

        private static DateText day(String year, int month, String day) {
            return new Parsed(LocalDate.of(Integer.parseInt(year), month, Integer.parseInt(day)));
        }

        /** The month that a word begins, from one; zero if none. */
        private static int month(String word) {
            String lower = word.toLowerCase(Locale.ROOT);
            for (int i = 0; i < MONTHS.size(); i++) {
                if (MONTHS.get(i).startsWith(lower) || (lower.equals("sept") && i == 8)) {
                    return i + 1;
                }
            }
            return 0;
        }
    }
}
