package perkilo.orderplan;

import static java.util.Objects.requireNonNull;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import perkilo.model.Book;
import perkilo.model.Demand;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.purchasing.Need;

/**
 * The days of a plan: those on which something is needed. A day's place in the list is its period.
 *
 * <p>What arrives between two of these days serves the later one first, and what expires between them the earlier one
 * last. So no other days are needed for a plan that is exact to the day.
 *
 * @param today the costing date; nothing is ordered before it
 * @param days rising, at least one, none before the costing date
 */
public record Horizon(LocalDate today, List<LocalDate> days) {

    /** The most days that are planned for. */
    public static final int MOST = 120;

    public Horizon {
        requireNonNull(today, "today");
        days = List.copyOf(days);
        if (days.isEmpty() || days.get(0).isBefore(today)) {
            throw new IllegalArgumentException("a plan needs days from %s on, but had %s".formatted(today, days));
        }
        for (int i = 1; i < days.size(); i++) {
            if (!days.get(i - 1).isBefore(days.get(i))) {
                throw new IllegalArgumentException("the days of a plan must rise, but were " + days);
            }
        }
    }

    /** The horizon with these days, in any order; the costing date if there are none. */
    static Horizon of(LocalDate today, Collection<LocalDate> days) {
        return new Horizon(today, days.isEmpty() ? List.of(today) : List.copyOf(new TreeSet<>(days)));
    }

    /**
     * The problems that prevent planning a book's demand.
     *
     * @return an error for each demand row in the past or after the most days, and one error if there is no demand at
     *     all
     */
    public static List<Finding> problems(Book book) {
        if (book.demand().isEmpty()) {
            return List.of(Finding.error(Origin.NONE, OrderMessages.noDemand()));
        }
        LocalDate today = book.settings().costingDate();
        LocalDate last = lastDay(book);
        List<Finding> problems = new ArrayList<>();
        for (Demand demand : book.demand()) {
            LocalDate neededBy = demand.neededBy().date();
            if (neededBy.isBefore(today)) {
                problems.add(Finding.error(
                        demand.origin(), OrderMessages.neededBeforeToday(demand.product(), neededBy, today)));
            } else if (neededBy.isAfter(last)) {
                problems.add(Finding.error(
                        demand.origin(), OrderMessages.neededTooLate(demand.product(), neededBy, MOST, last)));
            }
        }
        return problems;
    }

    /** The last day with demand that is planned for. */
    static LocalDate lastDay(Book book) {
        TreeSet<LocalDate> days = new TreeSet<>();
        book.demand().forEach(demand -> days.add(demand.neededBy().date()));
        List<LocalDate> first = days.stream().limit(MOST).toList();
        return first.isEmpty() ? book.settings().costingDate() : first.get(first.size() - 1);
    }

    /** The number of days that are planned for. */
    public int periods() {
        return days.size();
    }

    /** A period's day: goods for it must be there. */
    public LocalDate day(int period) {
        return days.get(period);
    }

    /** The last day. */
    public LocalDate end() {
        return days.get(days.size() - 1);
    }

    /** The first period on or after a day: the first that goods can serve that are there from that day on. */
    public int periodFrom(LocalDate day) {
        int at = Collections.binarySearch(days, day);
        return at < 0 ? -at - 1 : at;
    }

    /**
     * The last period that goods can serve which may be used until a day; below zero if there is none. After the end, a
     * later day is a larger number.
     *
     * @param lastDay null if no end is known
     */
    public int lastUse(@Nullable LocalDate lastDay) {
        if (lastDay == null) {
            return Need.UNLIMITED;
        }
        return lastDay.isAfter(end())
                ? (int) Math.min(Need.UNLIMITED - 1L, periods() - 1 + ChronoUnit.DAYS.between(end(), lastDay))
                : periodFrom(lastDay.plusDays(1)) - 1;
    }

    /** By period: the days until the next one; none after the last. */
    List<Integer> lengths() {
        List<Integer> lengths = new ArrayList<>();
        for (int period = 0; period < periods(); period++) {
            lengths.add(period + 1 < periods() ? daysBetween(day(period), day(period + 1)) : 0);
        }
        return lengths;
    }

    /** The days from one to another. */
    static int daysBetween(LocalDate from, LocalDate to) {
        return Math.toIntExact(ChronoUnit.DAYS.between(from, to));
    }

    /** The number of months from that of the costing date to that of the end, both counted. */
    public int months() {
        return (int) ChronoUnit.MONTHS.between(YearMonth.from(today), YearMonth.from(end())) + 1;
    }

    /** Whether goods expected on a day are overdue. */
    public boolean isOverdue(LocalDate expected) {
        return !expected.isAfter(today);
    }

    /** A period's day in words. */
    public String name(int period) {
        return day(period).toString();
    }
}
