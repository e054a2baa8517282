package perkilo.reading.table;

import java.text.Normalizer;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Dates as people write them in text, the names of months in five languages. {@code 03/04/2026} can be two days, and is
 * {@link Ambiguous}.
 */
public sealed interface DateText {

    /** A day. */
    record Parsed(LocalDate day) implements DateText {}

    /**
     * Two days that a text can mean.
     *
     * @param one the day if the day comes first
     * @param other the day if the month comes first
     */
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

    /** Which of day and month comes first in a date. */
    enum Order {
        DAY_FIRST,
        MONTH_FIRST,
        UNKNOWN
    }

    /**
     * What a text says of the order of day and month: a number above 12 is the day. With points the day comes first in
     * every country that writes dates so (common practice, no source).
     */
    static Order order(String text) {
        Matcher numbers = Parser.YEAR_LAST.matcher(text.strip());
        if (!numbers.matches()) {
            return Order.UNKNOWN;
        }
        if (numbers.group(2).equals(".") || Integer.parseInt(numbers.group(1)) > Parser.MONTHS_OF_YEAR) {
            return Order.DAY_FIRST;
        }
        return Integer.parseInt(numbers.group(3)) > Parser.MONTHS_OF_YEAR ? Order.MONTH_FIRST : Order.UNKNOWN;
    }

    /** The reading of one text. */
    final class Parser {

        private static final Pattern YEAR_FIRST =
                Pattern.compile("(\\d{4})[-/.](\\d{1,2})[-/.](\\d{1,2})(?:[T ]\\d{2}:\\d{2}.*)?");
        private static final Pattern YEAR_LAST = Pattern.compile("(\\d{1,2})([-/.])(\\d{1,2})\\2(\\d{4}|\\d{2})");
        private static final Pattern DAY_MONTH = Pattern.compile(
                "(\\d{1,2})(?:er|st|nd|rd|th|º|°)?[\\s.-]+(?:de\\s+)?(\\p{L}{3,10})\\.?,?[\\s-]+(?:de\\s+)?(\\d{4}|\\d{2})");
        private static final Pattern MONTH_DAY = Pattern.compile("(\\p{L}{3,10})\\.?\\s+(\\d{1,2}),?\\s+(\\d{4})");
        private static final Pattern ACCENTS = Pattern.compile("\\p{M}");

        /** English, German, French, Italian and Spanish, without accents. */
        private static final List<List<String>> MONTHS = List.of(
                List.of("january", "januar", "janner", "janvier", "gennaio", "enero"),
                List.of("february", "februar", "feber", "fevrier", "febbraio", "febrero"),
                List.of("march", "marz", "maerz", "mars", "marzo"),
                List.of("april", "avril", "aprile", "abril"),
                List.of("may", "mai", "maggio", "mayo"),
                List.of("june", "juni", "juin", "giugno", "junio"),
                List.of("july", "juli", "juillet", "luglio", "julio"),
                List.of("august", "aout", "agosto"),
                List.of("september", "septembre", "settembre", "septiembre", "setiembre"),
                List.of("october", "oktober", "octobre", "ottobre", "octubre"),
                List.of("november", "novembre", "noviembre"),
                List.of("december", "dezember", "decembre", "dicembre", "diciembre"));

        private static final int MONTHS_OF_YEAR = 12;
        private static final int CENTURY = 100;
        private static final int MILLENNIUM = 2000;

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
            int year = year(numbers.group(4));
            boolean dayFirst = numbers.group(2).equals(".");
            if (dayFirst || first > MONTHS_OF_YEAR || first == second) {
                return new Parsed(LocalDate.of(year, second, first));
            }
            if (second > MONTHS_OF_YEAR) {
                return new Parsed(LocalDate.of(year, first, second));
            }
            return new Ambiguous(LocalDate.of(year, second, first), LocalDate.of(year, first, second));
        }

        private static DateText day(String year, int month, String day) {
            return new Parsed(LocalDate.of(year(year), month, Integer.parseInt(day)));
        }

        /** A year; one of two digits is in this century. */
        private static int year(String digits) {
            int year = Integer.parseInt(digits);
            return year < CENTURY ? MILLENNIUM + year : year;
        }

        /** The month whose name a word begins, from one; zero if none, or several. */
        private static int month(String word) {
            String lower = ACCENTS.matcher(Normalizer.normalize(word, Normalizer.Form.NFD))
                    .replaceAll("")
                    .toLowerCase(Locale.ROOT);
            int month = 0;
            for (int i = 0; i < MONTHS.size(); i++) {
                if (MONTHS.get(i).stream().anyMatch(name -> name.startsWith(lower))) {
                    if (month > 0) {
                        return 0;
                    }
                    month = i + 1;
                }
            }
            return month;
        }
    }
}
