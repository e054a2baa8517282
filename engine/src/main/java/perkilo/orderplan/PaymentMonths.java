package perkilo.orderplan;

import static java.math.BigDecimal.ONE;
import static java.math.BigDecimal.ZERO;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import perkilo.costing.Market;
import perkilo.model.Supplier;
import perkilo.purchasing.Payments;

/** The months in which orders are paid, counted from that of the costing date. */
final class PaymentMonths {

    private final YearMonth first;
    private int months = 1;

    private PaymentMonths(LocalDate today) {
        first = YearMonth.from(today);
    }

    static Payments of(Market market, Horizon horizon, List<OrderSlots> slots) {
        PaymentMonths all = new PaymentMonths(horizon.today());
        List<List<List<Payments.Part>>> parts = new ArrayList<>();
        for (OrderSlots slot : slots) {
            Supplier.Payment terms = market.suppliers().get(slot.supplier()).payment();
            List<List<Payments.Part>> byPeriod = new ArrayList<>();
            for (LocalDate day : slot.days()) {
                byPeriod.add(day == null ? List.of() : all.parts(terms, day, day.plusDays(slot.leadDays())));
            }
            parts.add(byPeriod);
        }
        return new Payments(all.months, parts);
    }

    private List<Payments.Part> parts(Supplier.Payment terms, LocalDate ordered, LocalDate arrival) {
        if (!terms.isKnown()) {
            return List.of(new Payments.Part(month(ordered), ONE, ONE));
        }
        TreeMap<Integer, BigDecimal> invoiced = new TreeMap<>();
        invoiced.merge(month(ordered), terms.prepaidPart(), BigDecimal::add);
        LocalDate rest = arrival.plusDays(terms.daysAfterArrival());
        invoiced.merge(month(rest), ONE.subtract(terms.prepaidPart()), BigDecimal::add);
        int duty = month(arrival);
        invoiced.merge(duty, ZERO, BigDecimal::add);
        List<Payments.Part> parts = new ArrayList<>();
        invoiced.forEach((month, part) -> parts.add(new Payments.Part(month, part, month == duty ? ONE : ZERO)));
        return parts;
    }

    private int month(LocalDate day) {
        int month = (int) ChronoUnit.MONTHS.between(first, YearMonth.from(day));
        months = Math.max(months, month + 1);
        return month;
    }
}
