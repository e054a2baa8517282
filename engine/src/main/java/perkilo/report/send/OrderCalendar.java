package perkilo.report.send;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import perkilo.orderplan.OrderPlan;
import perkilo.origin.Decimals;
import perkilo.units.Currencies;

/** The days of ordering and of delivery of a plan, for a calendar. */
public final class OrderCalendar {

    /** The usual name of the file. */
    public static final String FILE = "orders.ics";

    private OrderCalendar() {}

    /**
     * The calendar: for each order an event on the day to place it, and one on the day of delivery.
     *
     * @param now when it is made
     */
    public static CalendarText of(OrderPlan plan, Instant now) {
        List<CalendarText.Event> events = new ArrayList<>();
        for (OrderToSend order : OrderToSend.of(plan)) {
            String supplier = order.supplier().name();
            String lines = lines(order);
            events.add(new CalendarText.Event(
                    order.number() + "-order@perkilo",
                    order.orderedOn(),
                    "Order from " + supplier + " (" + order.number() + ")",
                    "Deliver by " + order.arrivesOn() + "\n" + lines));
            events.add(new CalendarText.Event(
                    order.number() + "-delivery@perkilo",
                    order.arrivesOn(),
                    "Delivery from " + supplier + " (" + order.number() + ")",
                    "Ordered on " + order.orderedOn() + "\n" + lines));
        }
        return new CalendarText(events, now);
    }

    private static String lines(OrderToSend order) {
        StringBuilder lines = new StringBuilder();
        for (OrderToSend.Line line : order.lines()) {
            lines.append(line.packs())
                    .append(" × ")
                    .append(line.pack())
                    .append(' ')
                    .append(line.listing().offer().item())
                    .append(", ")
                    .append(Decimals.amount(
                            line.goods(),
                            Currencies.minorDigits(line.listing().offer().currency())))
                    .append(' ')
                    .append(line.listing().offer().currency().getCurrencyCode())
                    .append('\n');
        }
        return lines.toString().stripTrailing();
    }
}
