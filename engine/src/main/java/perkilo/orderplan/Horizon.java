package perkilo.orderplan;

import static java.util.Objects.requireNonNull;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import perkilo.model.Book;
import perkilo.model.Demand;
import perkilo.origin.Finding;
import perkilo.origin.Origin;

/**
 * The planned months: from the month of the costing date to the last month with demand.
 *
 * @param today the costing date; nothing is ordered before it
 * @param months in order, without gaps, 1 to 12; a month's place in the list is its period
 */
public record Horizon(LocalDate today, List<YearMonth> months) {

    /** The longest horizon, in months. */
    public static final int LONGEST = 12;

    public Horizon {
        requireNonNull(today, "today");
        months = List.copyOf(months);
        if (months.isEmpty() || months.size() > LONGEST) {
            throw new IllegalArgumentException("a horizon has 1 to 12 months, but had " + months.size());
        }
    }

    /**
     * The horizon of a book.
     *
     * @throws IllegalArgumentException if there is no demand
     */
    public static Horizon of(Book book) {
        LocalDate today = book.settings().costingDate();
        LocalDate last = book.demand().stream()
                .map(demand -> demand.neededBy().date())
                .max(LocalDate::compareTo)
                .orElseThrow(() -> new IllegalArgumentException("no demand"));
        return ofMonths(today, ChronoUnit.MONTHS.between(YearMonth.from(today), YearMonth.from(last)) + 1);
    }

    /** The same horizon with this number of months, at least 1 and at most the longest. */
    Horizon ofMonths(int count) {
        return ofMonths(today, count);
    }

    private static Horizon ofMonths(LocalDate today, long count) {
        return new Horizon(
                today,
                Stream.iterate(YearMonth.from(today), month -> month.plusMonths(1))
                        .limit(Math.max(1, Math.min(LONGEST, count)))
                        .toList());
    }

    /**
     * The problems that prevent planning a book's demand.
     *
     * @return an error for each demand row in the past or after the longest horizon, and one error if there is no
     *     demand at all
     */
    public static List<Finding> problems(Book book) {
        if (book.demand().isEmpty()) {
            return List.of(Finding.error(Origin.NONE, OrderMessages.noDemand()));
        }
        List<Finding> problems = new ArrayList<>();
        for (Demand demand : book.demand()) {
            String problem = problem(book.settings().costingDate(), demand);
            if (problem != null) {
                problems.add(Finding.error(demand.origin(), problem));
            }
        }
        return problems;
    }

    private static @Nullable String problem(LocalDate today, Demand demand) {
        LocalDate neededBy = demand.neededBy().date();
        YearMonth last = YearMonth.from(today).plusMonths(LONGEST - 1);
        if (neededBy.isBefore(today)) {
            return OrderMessages.neededBeforeToday(demand.product(), neededBy, today);
        }
        if (YearMonth.from(neededBy).isAfter(last)) {
            return OrderMessages.neededTooLate(demand.product(), neededBy, LONGEST, name(last));
        }
        return null;
    }

    /** The number of planned months. */
    public int periods() {
        return months.size();
    }

    /** The period of a day's month; below zero or after the last if it is outside the horizon. */
    public int periodOf(LocalDate day) {
        return (int) ChronoUnit.MONTHS.between(months.get(0), YearMonth.from(day));
    }

    /** The first day of a period's month: goods for it must be there. */
    public LocalDate firstDay(int period) {
        return months.get(0).plusMonths(period).atDay(1);
    }

    /** The day on which an order for a period is placed, if goods take {@code leadDays} from order to arrival. */
    public LocalDate orderDay(int period, int leadDays) {
        return firstDay(period).minusDays(leadDays);
    }

    /** The last day on which an order may be placed. */
    public LocalDate lastOrderDay() {
        return firstDay(periods() - 1);
    }

    /**
     * The first period for which goods can arrive, if they take {@code leadDays} from order to arrival: the order is
     * placed that many days before the first day of the month, and not before the costing date. May be after the last
     * period.
     */
    public int firstPeriod(int leadDays) {
        return firstPeriodFrom(today.plusDays(leadDays));
    }

    /** The first period whose month begins on or after a day; may be after the last period. */
    int firstPeriodFrom(LocalDate day) {
        int period = periodOf(day);
        return firstDay(period).isBefore(day) ? period + 1 : period;
    }

    /** Whether goods expected on a day are overdue. */
    public boolean isOverdue(LocalDate expected) {
        return !expected.isAfter(today);
    }

    /** The period for which goods expected on a day arrive: the first if they are overdue. */
    int arrival(LocalDate expected) {
        return isOverdue(expected) ? 0 : firstPeriodFrom(expected);
    }

    /**
     * The number of months, from the first on, in which a lot may be used until {@code lastDay}: those that end on or
     * before that day.
     */
    public int usablePeriods(LocalDate lastDay) {
        return Math.max(0, periodOf(lastDay.plusDays(1)));
    }

    /** A month in words: {@code January 2027}. */
    public static String name(YearMonth month) {
        return month.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH) + " " + month.getYear();
    }

    /** A period's month in words. */
    public String name(int period) {
        return name(months.get(0).plusMonths(period));
    }
}
