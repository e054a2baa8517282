package perkilo.layouts;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.IsoFields;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Dates in lists, in words of five languages: days, months, weeks and quarters.
 *
 * <p>With points the day comes first: {@code 03.04.2026} is the third of April in every country that writes it so
 * (common practice, no source). With slashes the order is not known if both numbers can be months. Weeks are those of
 * ISO 8601.
 */
public final class ListDates {

    private static final String[][] MONTHS = {
        {"january", "januar", "janner", "jaenner", "janvier", "gennaio", "enero", "janv", "jan", "gen", "ene"},
        {"february", "februar", "feber", "fevrier", "febbraio", "febrero", "fevr", "febb", "feb", "fev"},
        {"march", "maerz", "marz", "mars", "marzo", "mrz", "mar"},
        {"april", "avril", "aprile", "abril", "apr", "avr", "abr"},
        {"may", "mai", "maggio", "mayo", "mag"},
        {"june", "juni", "juin", "giugno", "junio", "jun", "giu"},
        {"july", "juli", "juillet", "luglio", "julio", "juil", "jul", "lug"},
        {"august", "aout", "agosto", "agos", "aug", "ago"},
        {"september", "septembre", "settembre", "septiembre", "setiembre", "sept", "sett", "sep", "set"},
        {"october", "oktober", "octobre", "ottobre", "octubre", "oct", "okt", "ott"},
        {"november", "novembre", "noviembre", "nov"},
        {"december", "dezember", "decembre", "dicembre", "diciembre", "dec", "dez", "dic"}
    };
    private static final Map<String, Integer> BY_NAME = byName();

    private static final String NAME = "(" + names() + ")(?!\\p{L})\\.?";
    private static final String YEAR = "('?\\d{2}|\\d{4})(?!\\d|[.,]\\d|\\s?%)";
    private static final String DAY = "(\\d{1,2})(?:\\.|er|re|ro|st|nd|rd|th|[ºª°])?";
    private static final String BEGIN = "(?<![\\d\\p{L}]|\\d[./-])";
    private static final String END = "(?!\\d|[./-]\\d)";
    private static final String OF = "(?:(?:of|de|del|di|d')\\s*)?";

    private static final Pattern YEAR_FIRST =
            compiled(BEGIN + "(\\d{4})([-/.])(\\d{1,2})\\2(\\d{1,2})(?!\\d)(?:[t ]\\d{2}:\\d{2}(?::\\d{2})?\\S*)?");
    private static final Pattern NUMBERS = compiled(BEGIN + "(\\d{1,2})([-/.]) ?(\\d{1,2})\\2 ?(\\d{4}|\\d{2})" + END);
    private static final Pattern DAY_MONTH = compiled(BEGIN + DAY + "[\\s-]*" + OF + NAME + "[,\\s-]*" + OF + YEAR);
    private static final Pattern MONTH_DAY =
            compiled("(?<!\\p{L})" + NAME + "\\s+(\\d{1,2})(?:st|nd|rd|th)?(?:,\\s*|\\s+)" + YEAR);
    private static final Pattern WEEK = compiled(
            BEGIN + "(?:(?:kw|cw|wk|week|woche|kalenderwoche|semaine|sem|settimana|sett|semana|w)\\.?\\s*(\\d{1,2})"
                    + "[\\s/.,-]+" + YEAR + "|(\\d{1,2})\\.?\\s*kw[\\s/.-]*" + YEAR + "|(\\d{4})-?w(\\d{1,2}))" + END);
    private static final Pattern QUARTER = compiled(BEGIN + "(?:[qt]([1-4])[\\s/.-]*" + YEAR
            + "|([1-4])(?:\\.|er|e|eme|st|nd|rd|th|[ºª°])?\\s*" + "(?:quartal|quarter|trimestre|trim\\.?)[\\s/]*" + OF
            + YEAR + "|(\\d{4})[\\s/-]?[qt]([1-4]))" + END);
    private static final Pattern HALF = compiled(BEGIN + "(?:h([12])[\\s/.-]*" + YEAR
            + "|([12])(?:\\.|er|e|eme|st|nd|[ºª°])?\\s*(?:halbjahr|half|semestre)[\\s/]*" + OF + YEAR + ")" + END);
    private static final Pattern END_OF_MONTH =
            compiled("(?<!\\p{L})(?:end of|end|ende|fin|fine|final(?:es)?)\\s+" + OF + NAME + "[\\s/-]*" + OF + YEAR);
    private static final Pattern MONTH = compiled("(?<![\\p{L}\\d])" + NAME + "[\\s/-]*" + OF + YEAR);
    private static final Pattern NUMBERED_MONTH =
            compiled(BEGIN + "(?:(\\d{1,2})[/.](\\d{4})|(\\d{4})[-/.](\\d{1,2}))(?!\\d|[-/.,]\\d)");

    private static final List<Pattern> ALL = List.of(
            YEAR_FIRST, NUMBERS, DAY_MONTH, MONTH_DAY, WEEK, QUARTER, HALF, END_OF_MONTH, MONTH, NUMBERED_MONTH);

    private static final int MONTHS_OF_YEAR = 12;
    private static final int CENTURY = 2000;
    private static final int EARLIEST = 2010;
    private static final int LATEST = 2059;

    /** A year with two digits at the beginning is one from here on. */
    private static final int RECENT = 20;

    private static final int LONGEST = 400;

    /**
     * What a text of one date says.
     *
     * @param day the day, or the first of several; null if it can be two days
     * @param last the last day if it means several, such as a month; the day itself otherwise
     * @param ambiguous whether it can be two days
     */
    public record Read(@Nullable LocalDate day, @Nullable LocalDate last, boolean ambiguous) {

        private static Read of(LocalDate day) {
            return new Read(day, day, false);
        }

        /** Whether it means several days, such as a month or a week. */
        public boolean isRough() {
            return day != null && !day.equals(last);
        }
    }

    /**
     * A date in a longer text.
     *
     * @param read the date
     * @param before the text between it and the date before it
     * @param text the date as typed
     */
    public record Placed(Read read, String before, String text) {}

    private @Nullable Boolean dayFirst;
    private @Nullable Supplier<List<String>> others;

    /**
     * Dates of one supplier.
     *
     * @param order {@code day first} or {@code month first}, for dates with slashes; empty if a person has not said
     */
    public ListDates(Optional<String> order) {
        this(order.map(words -> words.toLowerCase(Locale.ROOT).startsWith("day"))
                .orElse(null));
    }

    private ListDates(@Nullable Boolean dayFirst) {
        this.dayFirst = dayFirst;
    }

    /**
     * The same, with the order that other dates of the list show: if one has a 13 to 31 first, the day comes first.
     *
     * @param texts the other dates; asked for when a date needs them
     */
    public ListDates shownBy(Supplier<List<String>> texts) {
        ListDates shown = new ListDates(dayFirst);
        shown.others = dayFirst == null ? texts : null;
        return shown;
    }

    private @Nullable Boolean dayFirst() {
        if (others != null) {
            dayFirst = shown(others.get());
            others = null;
        }
        return dayFirst;
    }

    private static @Nullable Boolean shown(List<String> texts) {
        boolean day = false;
        boolean month = false;
        for (String text : texts) {
            Matcher numbers = NUMBERS.matcher(folded(text));
            while (numbers.find()) {
                if (!numbers.group(2).equals(".")) {
                    day |= Integer.parseInt(numbers.group(1)) > MONTHS_OF_YEAR;
                    month |= Integer.parseInt(numbers.group(3)) > MONTHS_OF_YEAR;
                }
            }
        }
        return day == month ? null : Boolean.valueOf(day);
    }

    /** All dates in a text, from left to right. */
    public List<Placed> all(String text) {
        String folded = folded(text.length() > LONGEST ? text.substring(0, LONGEST) : text);
        record Found(int from, int to, Read read) {}
        List<Found> found = new ArrayList<>();
        for (Pattern pattern : ALL) {
            Matcher matcher = pattern.matcher(folded);
            while (matcher.find()) {
                int from = matcher.start();
                int to = matcher.end();
                boolean taken = found.stream().anyMatch(other -> from < other.to && other.from < to);
                if (!taken && !isUnsure(pattern, matcher)) {
                    read(pattern, matcher).ifPresent(read -> found.add(new Found(from, to, read)));
                }
            }
        }
        found.sort(Comparator.comparingInt(Found::from));
        List<Placed> placed = new ArrayList<>();
        int end = 0;
        for (Found one : found) {
            placed.add(new Placed(one.read, text.substring(end, one.from), text.substring(one.from, one.to)));
            end = one.to;
        }
        return placed;
    }

    /** Whether a match in a longer text may be something else, such as {@code set 25}. */
    private static boolean isUnsure(Pattern pattern, MatchResult found) {
        return pattern == MONTH
                && found.group(2).length() == 2
                && switch (found.group(1)) {
                    case "set", "ago", "may", "mar", "mars", "gen", "mag", "lug", "ene", "dic" -> true;
                    default -> false;
                };
    }

    /** The date that a text means; empty if it is not a date. */
    public Optional<Read> one(String text) {
        String folded = folded(text.strip());
        for (Pattern pattern : ALL) {
            Matcher matcher = pattern.matcher(folded);
            if (matcher.matches()) {
                return read(pattern, matcher);
            }
        }
        return Optional.empty();
    }

    private Optional<Read> read(Pattern pattern, MatchResult found) {
        try {
            return Optional.ofNullable(reading(pattern, found)).filter(ListDates::isPlausible);
        } catch (DateTimeException noSuchDay) {
            return Optional.empty();
        }
    }

    private static boolean isPlausible(Read read) {
        LocalDate day = read.day();
        return day == null || (day.getYear() >= EARLIEST && day.getYear() <= LATEST);
    }

    private @Nullable Read reading(Pattern pattern, MatchResult found) {
        if (pattern == YEAR_FIRST) {
            return Read.of(day(found.group(1), number(found.group(3)), found.group(4)));
        }
        if (pattern == NUMBERS) {
            return numbers(found);
        }
        if (pattern == DAY_MONTH) {
            return Read.of(day(found.group(3), month(found.group(2)), found.group(1)));
        }
        if (pattern == MONTH_DAY) {
            return Read.of(day(found.group(3), month(found.group(1)), found.group(2)));
        }
        if (pattern == WEEK) {
            String week = first(found.group(1), found.group(3), found.group(6));
            String year = first(found.group(2), found.group(4), found.group(5));
            return week(year(year), number(week));
        }
        if (pattern == QUARTER) {
            String quarter = first(found.group(1), found.group(3), found.group(6));
            String year = first(found.group(2), found.group(4), found.group(5));
            return months(year(year), 3 * number(quarter) - 2, 3);
        }
        if (pattern == HALF) {
            String half = first(found.group(1), found.group(3));
            return months(year(first(found.group(2), found.group(4))), 6 * number(half) - 5, 6);
        }
        if (pattern == END_OF_MONTH) {
            return Read.of(
                    YearMonth.of(year(found.group(2)), month(found.group(1))).atEndOfMonth());
        }
        if (pattern == MONTH) {
            return months(year(found.group(2)), month(found.group(1)), 1);
        }
        boolean yearLast = found.group(2) != null;
        return months(number(yearLast ? found.group(2) : found.group(3)), number(found.group(yearLast ? 1 : 4)), 1);
    }

    private @Nullable Read numbers(MatchResult found) {
        int one = number(found.group(1));
        int other = number(found.group(3));
        int year = year(found.group(4));
        if (found.group(2).equals(".") || one == other) {
            return Read.of(LocalDate.of(year, other, one));
        }
        List<LocalDate> days = new ArrayList<>();
        add(days, year, other, one);
        int dayFirsts = days.size();
        add(days, year, one, other);
        Boolean order = days.size() > 1 ? dayFirst() : null;
        if (order != null) {
            return Read.of(days.get(order ? 0 : dayFirsts));
        }
        if (found.group(4).length() == 2 && found.group(2).equals("-") && one >= RECENT) {
            add(days, CENTURY + one, other, number(found.group(4)));
        }
        List<LocalDate> different = days.stream().distinct().toList();
        return switch (different.size()) {
            case 0 -> null;
            case 1 -> Read.of(different.get(0));
            default -> new Read(null, null, true);
        };
    }

    private static void add(List<LocalDate> days, int year, int month, int day) {
        boolean possible = month >= 1
                && month <= MONTHS_OF_YEAR
                && day >= 1
                && year >= EARLIEST
                && year <= LATEST
                && day <= YearMonth.of(year, month).lengthOfMonth();
        if (possible) {
            days.add(LocalDate.of(year, month, day));
        }
    }

    private static LocalDate day(String year, int month, String day) {
        return LocalDate.of(year(year), month, number(day));
    }

    private static Read months(int year, int month, int count) {
        YearMonth begins = YearMonth.of(year, month);
        return new Read(begins.atDay(1), begins.plusMonths(count - 1L).atEndOfMonth(), false);
    }

    private static Read week(int year, int week) {
        LocalDate monday = LocalDate.of(year, 1, 4)
                .with(IsoFields.WEEK_OF_WEEK_BASED_YEAR, week)
                .with(java.time.DayOfWeek.MONDAY);
        return new Read(monday, monday.plusDays(6), false);
    }

    private static int month(String name) {
        return BY_NAME.getOrDefault(name, 0);
    }

    /** Years with two digits are those of this century. */
    private static int year(String digits) {
        String plain = digits.startsWith("'") ? digits.substring(1) : digits;
        return plain.length() == 2 ? CENTURY + number(plain) : number(plain);
    }

    private static int number(String digits) {
        return Integer.parseInt(digits);
    }

    private static String first(@Nullable String... texts) {
        for (String text : texts) {
            if (text != null) {
                return text;
            }
        }
        throw new IllegalStateException("a pattern without its parts");
    }

    private static Pattern compiled(String regex) {
        return Pattern.compile(regex, Pattern.UNICODE_CASE);
    }

    private static Map<String, Integer> byName() {
        Map<String, Integer> byName = new HashMap<>();
        for (int month = 0; month < MONTHS.length; month++) {
            for (String name : MONTHS[month]) {
                byName.put(name, month + 1);
            }
        }
        return byName;
    }

    private static String names() {
        return String.join(
                "|",
                BY_NAME.keySet().stream()
                        .sorted(Comparator.comparingInt(String::length)
                                .reversed()
                                .thenComparing(name -> name))
                        .toList());
    }

    /** The text in small letters without accents, with plain spaces and dashes; each letter keeps its place. */
    static String folded(String text) {
        StringBuilder folded = new StringBuilder(text.length());
        for (int at = 0; at < text.length(); at++) {
            folded.append(folded(text.charAt(at)));
        }
        return folded.toString();
    }

    private static char folded(char letter) {
        if (letter < 0x7F) {
            return letter >= 'A' && letter <= 'Z' ? (char) (letter + 32) : letter < ' ' ? ' ' : letter;
        }
        return switch (Character.toLowerCase(letter)) {
            case 'à', 'á', 'â', 'ã', 'ä' -> 'a';
            case 'è', 'é', 'ê', 'ë' -> 'e';
            case 'ì', 'í', 'î', 'ï' -> 'i';
            case 'ò', 'ó', 'ô', 'õ', 'ö' -> 'o';
            case 'ù', 'ú', 'û', 'ü' -> 'u';
            case 'ç' -> 'c';
            case 'ñ' -> 'n';
            case '–', '—', '−', '‐', '‑' -> '-';
            case '’', '‘', '´' -> '\'';
            default -> Character.isSpaceChar(letter) ? ' ' : Character.toLowerCase(letter);
        };
    }
}
