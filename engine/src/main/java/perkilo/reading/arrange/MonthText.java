package perkilo.reading.arrange;

import java.time.LocalDate;
import java.time.Year;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import perkilo.xlsx.grid.Cell;

/**
 * A month as people write it over a column: {@code Jan 27}, {@code 2027-01}, {@code 01/2027}, {@code janv. 27}, or a
 * real date.
 *
 * @param day the first of the month, or the day of a real date; null if the year is in another cell
 * @param month from 1
 */
public record MonthText(@Nullable LocalDate day, int month) {

    private static final Pattern NAMED = Pattern.compile("(\\p{L}{3,10})\\.?(?:[\\s\\-/’'.]*(\\d{4}|\\d{2}))?");
    private static final Pattern YEAR_FIRST = Pattern.compile("(\\d{4})[-/.](\\d{1,2})");
    private static final Pattern YEAR_LAST = Pattern.compile("(\\d{1,2})[/.\\-](\\d{4})");
    private static final int MONTHS = 12;
    private static final int LONGEST = 20;
    private static final int CENTURY = 2000;
    private static final int TWO_DIGITS = 100;

    /** The first day of the month that a text names with its year; null if it names none. */
    public static @Nullable LocalDate firstDay(Cell cell) {
        return cell.kind() == Cell.Kind.TEXT
                ? of(cell.text()).map(MonthText::day).orElse(null)
                : null;
    }

    /** The month in a cell; empty if it is none. */
    static Optional<MonthText> of(Cell cell) {
        LocalDate date = cell.date();
        if (date != null) {
            return Optional.of(new MonthText(date, date.getMonthValue()));
        }
        return cell.kind() == Cell.Kind.TEXT ? of(cell.text()) : Optional.empty();
    }

    private static Optional<MonthText> of(String text) {
        if (text.length() > LONGEST) {
            return Optional.empty();
        }
        Matcher named = NAMED.matcher(text);
        if (named.matches()) {
            String year = named.group(2);
            return SheetWords.month(named.group(1))
                    .map(month -> year == null ? new MonthText(null, month) : of(Integer.parseInt(year), month));
        }
        Matcher first = YEAR_FIRST.matcher(text);
        if (first.matches()) {
            return numbers(first.group(1), first.group(2));
        }
        Matcher last = YEAR_LAST.matcher(text);
        return last.matches() ? numbers(last.group(2), last.group(1)) : Optional.empty();
    }

    private static Optional<MonthText> numbers(String year, String month) {
        int number = Integer.parseInt(month);
        return number >= 1 && number <= MONTHS ? Optional.of(of(Integer.parseInt(year), number)) : Optional.empty();
    }

    private static MonthText of(int year, int month) {
        return new MonthText(
                Year.of(year < TWO_DIGITS ? CENTURY + year : year)
                        .atMonth(month)
                        .atDay(1),
                month);
    }

    /** The same month of a year, if it names none itself. */
    MonthText in(int year) {
        return day == null ? of(year, month) : this;
    }
}
