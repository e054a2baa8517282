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
 * The months that are planned for: from the month of the costing date to the last one that anything is wanted in.
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
     * @throws IllegalArgumentException if {@link #problems} has any
     */
    public static Horizon of(Book book) {
        LocalDate today = book.settings().costingDate();
        LocalDate last = book.demand().stream()
                .map(demand -> demand.neededBy().date())
                .max(LocalDate::compareTo)
                .orElseThrow(() -> new IllegalArgumentException("no demand"));
        YearMonth first = YearMonth.from(today);
        long count = ChronoUnit.MONTHS.between(first, YearMonth.from(last)) + 1;
        return new Horizon(
                today,
                Stream.iterate(first, month -> month.plusMonths(1)).limit(count).toList());
    }

    /**
     * What keeps a book's demand from being planned.
     *
     * @return an error for each demand row that lies in the past or beyond the longest horizon, and one where there is
     *     no demand at all
     */
    public static List<Finding> problems(Book book) {
        if (book.demand().isEmpty()) {
            return List.of(
                    Finding.error(
                            Origin.NONE,
                            "There is no demand to plan for. Add a sheet Demand with the columns Product, Units and Needed by."));
        }
        List<Finding> problems = new ArrayList<>();
        for (Demand demand : book.demand()) {
            String why = why(book.settings().costingDate(), demand.neededBy().date());
            if (why != null) {
                problems.add(Finding.error(
                        demand.origin(),
                        "\"%s\" is needed by %s, %s".formatted(demand.product(), demand.neededBy(), why)));
            }
        }
        return problems;
    }

    private static @Nullable String why(LocalDate today, LocalDate neededBy) {
        YearMonth last = YearMonth.from(today).plusMonths(LONGEST - 1);
        if (neededBy.isBefore(today)) {
            return "before the costing date of %s. Correct the date, or plan from an earlier costing date."
                    .formatted(today);
        }
        if (YearMonth.from(neededBy).isAfter(last)) {
            return "but orders are planned for %d months, to the end of %s. Leave the row out until its time comes."
                    .formatted(LONGEST, name(last));
        }
        return null;
    }

    /** How many months are planned for. */
    public int periods() {
        return months.size();
    }

    /** The period of the month that a day lies in; below zero or beyond the last where it is not in the horizon. */
    public int periodOf(LocalDate day) {
        return (int) ChronoUnit.MONTHS.between(months.get(0), YearMonth.from(day));
    }

    /** The first day of a period's month: goods for it have to be there. */
    public LocalDate firstDay(int period) {
        return months.get(0).plusMonths(period).atDay(1);
    }

    /** The day that an order for a period is placed on, if goods take {@code leadDays} from order to arrival. */
    public LocalDate orderDay(int period, int leadDays) {
        return firstDay(period).minusDays(leadDays);
    }

    /** No order is placed later than on this day. */
    public LocalDate lastOrderDay() {
        return firstDay(periods() - 1);
    }

    /**
     * The first period that goods can be there for, if they take {@code leadDays} from order to arrival: the order is
     * placed that many days before the first day of the month, and not before the costing date. May lie beyond the last
     * period.
     */
    public int firstPeriod(int leadDays) {
        return firstPeriodFrom(today.plusDays(leadDays));
    }

    /** The first period whose month begins on or after a day; may lie beyond the last period. */
    int firstPeriodFrom(LocalDate day) {
        int period = periodOf(day);
        return firstDay(period).isBefore(day) ? period + 1 : period;
    }

    /** Whether goods that are expected on a day should be there by now. */
    public boolean isOverdue(LocalDate expected) {
        return !expected.isAfter(today);
    }

    /** The period that goods which are expected on a day are there for: the first where they are overdue. */
    int arrival(LocalDate expected) {
        return isOverdue(expected) ? 0 : firstPeriodFrom(expected);
    }

    /**
     * How many months from the first on a lot may be used in, if it may be used until {@code lastDay}: those that end
     * on or before that day.
     */
    public int usablePeriods(LocalDate lastDay) {
        return Math.max(0, periodOf(lastDay.plusDays(1)));
    }

    /** A month as a person says it: {@code January 2027}. */
    public static String name(YearMonth month) {
        return month.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH) + " " + month.getYear();
    }

    /** A period's month as a person says it. */
    public String name(int period) {
        return name(months.get(0).plusMonths(period));
    }
}
