package perkilo.orderplan;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import perkilo.model.Supplier;

/**
 * A payment for an order.
 *
 * <p>The prepaid part of goods and charges is paid on the day of the order, the rest a number of days after the goods
 * arrive, and duty on arrival. If the supplier states neither the part nor the days, everything is paid on the day of
 * the order. The payments of an order add up to what it costs.
 *
 * @param day when it is paid
 * @param kind what it is for
 * @param part of the kind's amount, as a fraction above zero
 * @param home in home currency
 */
public record Payment(LocalDate day, Kind kind, BigDecimal part, BigDecimal home) {

    /** What is paid. */
    public enum Kind {
        /** Everything, on the day of the order. */
        ALL("everything"),
        /** Goods and charges with the order. */
        PREPAID("prepaid part"),
        /** Goods and charges after the goods have arrived. */
        REST("the rest"),
        /** Import duty on arrival. */
        DUTY("duty");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }

    /**
     * The payments for an order, by day.
     *
     * @param arrivesOn when the goods arrive
     */
    public static List<Payment> of(SupplierOrder order, LocalDate arrivesOn) {
        Supplier.Payment terms = order.supplier().payment();
        BigDecimal all = order.landed();
        List<Payment> payments = new ArrayList<>();
        if (!terms.isKnown()) {
            add(payments, order.orderBy(), Kind.ALL, BigDecimal.ONE, all);
            return payments;
        }
        BigDecimal duty = dutyHome(order);
        BigDecimal prepaid = terms.prepaidPart();
        BigDecimal rest = BigDecimal.ONE.subtract(prepaid);
        BigDecimal invoiced = all.subtract(duty);
        add(payments, order.orderBy(), Kind.PREPAID, prepaid, invoiced.multiply(prepaid));
        add(payments, arrivesOn, Kind.DUTY, BigDecimal.ONE, duty);
        add(payments, arrivesOn.plusDays(terms.daysAfterArrival()), Kind.REST, rest, invoiced.multiply(rest));
        return payments;
    }

    /** The duty on an order, in home currency. */
    public static BigDecimal dutyHome(SupplierOrder order) {
        return order.cost().lines().stream()
                .findFirst()
                .map(line -> order.cost().duty().multiply(line.toHome()))
                .orElse(BigDecimal.ZERO);
    }

    private static void add(List<Payment> payments, LocalDate day, Kind kind, BigDecimal part, BigDecimal home) {
        if (home.signum() != 0) {
            payments.add(new Payment(day, kind, part, home));
        }
    }
}
