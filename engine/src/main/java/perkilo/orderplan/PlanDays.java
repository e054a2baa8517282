package perkilo.orderplan;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import perkilo.costing.Market;

/** The days of a plan: those on which something is needed, and those on which safety stock may have to be filled up. */
final class PlanDays {

    private final Market market;
    private final WorkDays workDays;
    private final Set<String> withoutSafety;

    /**
     * The days.
     *
     * @param withoutSafety the keys of items whose safety stock cannot be kept
     */
    PlanDays(Market market, WorkDays workDays, Set<String> withoutSafety) {
        this.market = market;
        this.workDays = workDays;
        this.withoutSafety = withoutSafety;
    }

    Horizon of(List<Wanted> items) {
        LocalDate today = market.book().settings().costingDate();
        TreeSet<LocalDate> days = new TreeSet<>();
        for (Wanted item : items) {
            item.uses().stream().filter(use -> use.quantity().signum() > 0).forEach(use -> days.add(use.day()));
        }
        if (days.isEmpty()) {
            return Horizon.of(today, days);
        }
        SafetyStock safety = new SafetyStock(market, workDays, withoutSafety);
        LocalDate end = days.last();
        items.forEach(item -> days.addAll(safety.days(item, end)));
        boolean more = true;
        while (more) {
            TreeSet<LocalDate> found = new TreeSet<>();
            items.forEach(item -> found.addAll(safety.daysAfterExpiry(item, days)));
            more = days.addAll(found);
        }
        return Horizon.of(today, days);
    }
}
