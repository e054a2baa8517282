package perkilo.orderplan;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Set;
import java.util.stream.Collectors;
import perkilo.model.Book;

/**
 * The days on which orders are placed: Monday to Friday, but for days off.
 *
 * @param off days off
 */
public record WorkDays(Set<LocalDate> off) {

    public WorkDays {
        off = Set.copyOf(off);
    }

    /** The working days of a book. */
    public static WorkDays of(Book book) {
        return new WorkDays(book.daysOff().stream().map(one -> one.day().date()).collect(Collectors.toSet()));
    }

    /** Whether an order can be placed on a day. */
    public boolean contains(LocalDate day) {
        return day.getDayOfWeek() != DayOfWeek.SATURDAY && day.getDayOfWeek() != DayOfWeek.SUNDAY && !off.contains(day);
    }

    /** The last working day on or before a day. */
    public LocalDate onOrBefore(LocalDate day) {
        LocalDate found = day;
        while (!contains(found)) {
            found = found.minusDays(1);
        }
        return found;
    }

    /** The first working day on or after a day. */
    public LocalDate onOrAfter(LocalDate day) {
        LocalDate found = day;
        while (!contains(found)) {
            found = found.plusDays(1);
        }
        return found;
    }
}
