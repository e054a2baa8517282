package perkilo.orderplan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Market;
import perkilo.model.Supplier;
import perkilo.offers.OrderDays;

/**
 * The days on which a supplier can be ordered from, at most one for each period.
 *
 * <p>Of all days whose goods arrive after the period before and in time, the last working day is the best one: it has
 * the shortest storage and the longest shelf life. Only where a price ends on an earlier day is there a second choice,
 * on the last day of that price. Such days make up further slots of the supplier: orders of their own, with their own
 * freight and minimum.
 *
 * @param supplier index into the market's suppliers
 * @param leadDays from order to arrival
 * @param days by period: the day of the order; null if there is none
 */
public record OrderSlots(int supplier, int leadDays, List<@Nullable LocalDate> days) {

    public OrderSlots {
        days = Collections.unmodifiableList(new ArrayList<>(days));
    }

    /** The day on which goods for a period arrive; null if nothing can be ordered for it. */
    public @Nullable LocalDate arrival(int period) {
        LocalDate day = days.get(period);
        return day == null ? null : day.plusDays(leadDays);
    }

    /**
     * The slots of all suppliers: first one of each, in the order of the market, then the further ones.
     *
     * @param prices by supplier: the days of its prices for items of the plan
     */
    static List<OrderSlots> of(Market market, Horizon horizon, WorkDays workDays, List<List<OrderDays>> prices) {
        List<OrderSlots> slots = new ArrayList<>();
        for (int supplier = 0; supplier < market.suppliers().size(); supplier++) {
            Supplier one = market.suppliers().get(supplier);
            int lead = HorizonProblem.leadDays(one);
            List<@Nullable LocalDate> days = new ArrayList<>();
            for (int period = 0; period < horizon.periods(); period++) {
                days.add(latest(horizon, workDays, lead, period));
            }
            slots.add(new OrderSlots(supplier, lead, days));
        }
        for (int supplier = 0; supplier < prices.size(); supplier++) {
            slots.addAll(further(horizon, workDays, slots.get(supplier), prices.get(supplier)));
        }
        return slots;
    }

    /** The last working day whose goods arrive in time for a period, unless they are there for the one before. */
    private static @Nullable LocalDate latest(Horizon horizon, WorkDays workDays, int lead, int period) {
        LocalDate day = workDays.onOrBefore(horizon.day(period).minusDays(lead));
        boolean soonEnough = !day.isBefore(horizon.today());
        return soonEnough && horizon.periodFrom(day.plusDays(lead)) == period ? day : null;
    }

    /** A slot for each price that ends before the last working day of a period. */
    private static List<OrderSlots> further(
            Horizon horizon, WorkDays workDays, OrderSlots usual, List<OrderDays> prices) {
        TreeSet<LocalDate> ends = new TreeSet<>();
        for (OrderDays price : prices) {
            LocalDate last = price.last();
            if (price.next() != null && last != null) {
                ends.add(workDays.onOrBefore(last));
            }
        }
        List<List<@Nullable LocalDate>> further = new ArrayList<>();
        for (LocalDate end : ends) {
            int period = horizon.periodFrom(end.plusDays(usual.leadDays()));
            if (!end.isBefore(horizon.today())
                    && period < horizon.periods()
                    && !end.equals(usual.days().get(period))) {
                put(further, period, end, horizon.periods());
            }
        }
        return further.stream()
                .map(days -> new OrderSlots(usual.supplier(), usual.leadDays(), days))
                .toList();
    }

    /** Puts a day into the first list that has none for the period. */
    private static void put(List<List<@Nullable LocalDate>> lists, int period, LocalDate day, int periods) {
        for (List<@Nullable LocalDate> list : lists) {
            if (list.get(period) == null) {
                list.set(period, day);
                return;
            }
        }
        List<@Nullable LocalDate> list = new ArrayList<>(Collections.nCopies(periods, null));
        list.set(period, day);
        lists.add(list);
    }
}
