package perkilo.orderplan;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;

/**
 * A need that cannot be met in time and is planned for the first day on which it can be.
 *
 * @param item the item's name
 * @param neededBy the day on which it is needed
 * @param possibleOn the day that it is planned for
 * @param runs the runs that wait for it
 */
public record LateNeed(String item, LocalDate neededBy, LocalDate possibleOn, List<PlannedRun> runs) {

    public LateNeed {
        runs = List.copyOf(runs);
    }

    /** How many days later than needed. */
    public long daysLate() {
        return ChronoUnit.DAYS.between(neededBy, possibleOn);
    }
}
