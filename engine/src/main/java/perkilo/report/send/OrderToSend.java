package perkilo.report.send;

import java.math.BigDecimal;
import java.text.Normalizer;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import perkilo.costing.Listing;
import perkilo.model.Supplier;
import perkilo.orderplan.OrderPlan;
import perkilo.orderplan.SupplierOrder;
import perkilo.origin.Decimals;
import perkilo.purchasing.LineCost;
import perkilo.units.Measure;

/**
 * An order of a plan as it is sent.
 *
 * <p>Its number is made of the day of the order, the beginning of the supplier's name and a running number among the
 * orders that share both: {@code 20261122-TARNHO-1}. No two orders of a plan have the same number, and the same plan
 * has the same numbers each time.
 *
 * @param number the number
 * @param order the order in the plan
 */
public record OrderToSend(String number, SupplierOrder order) {

    private static final int LETTERS_OF_NAME = 6;

    /** All orders of a plan, by day, then in the order of the plan. */
    public static List<OrderToSend> of(OrderPlan plan) {
        Map<String, Integer> taken = new HashMap<>();
        List<OrderToSend> orders = new ArrayList<>();
        for (SupplierOrder order : plan.orders().stream()
                .sorted(Comparator.comparing(SupplierOrder::orderBy))
                .toList()) {
            String begin = order.orderBy().format(DateTimeFormatter.BASIC_ISO_DATE) + "-"
                    + code(order.supplier().name());
            orders.add(new OrderToSend(begin + "-" + taken.merge(begin, 1, Integer::sum), order));
        }
        return orders;
    }

    /** The beginning of a name in capital letters and digits without accents; X for a name without any. */
    private static String code(String name) {
        StringBuilder code = new StringBuilder();
        String plain = Normalizer.normalize(
                name.toUpperCase(Locale.ROOT)
                        .replace("Ø", "O")
                        .replace("Æ", "AE")
                        .replace("Œ", "OE")
                        .replace("Ł", "L")
                        .replace("Đ", "D"),
                Normalizer.Form.NFKD);
        for (int at = 0; at < plain.length() && code.length() < LETTERS_OF_NAME; at++) {
            char c = plain.charAt(at);
            if ((c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9')) {
                code.append(c);
            }
        }
        return code.length() == 0 ? "X" : code.toString();
    }

    /** Who gets it. */
    public Supplier supplier() {
        return order.supplier();
    }

    /** The day on which it is placed. */
    public LocalDate orderedOn() {
        return order.orderBy();
    }

    /** The day on which the goods arrive: the supplier's lead time after the order. */
    public LocalDate arrivesOn() {
        return order.arrivesOn();
    }

    /** The goods and charges that are paid to the supplier or a carrier, without duty, in the supplier's currency. */
    public BigDecimal goodsAndCharges() {
        return order.cost().goods().add(order.cost().charges());
    }

    /** What an order below the supplier's minimum costs on top, in the supplier's currency; zero for others. */
    public BigDecimal smallOrderCharge() {
        return order.cost().smallOrderCharge();
    }

    /** All that is paid for it, in home currency. */
    public BigDecimal landed() {
        return order.landed();
    }

    /** The lines. */
    public List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        for (int index = 0; index < order.listings().size(); index++) {
            lines.add(new Line(
                    index + 1, order.listings().get(index), order.cost().lines().get(index)));
        }
        return lines;
    }

    /**
     * A line of an order.
     *
     * @param number from one
     * @param listing the offer
     * @param cost the packs, and what they cost
     */
    public record Line(int number, Listing listing, LineCost cost) {

        /** How many packs are bought. */
        public long packs() {
            return cost.line().packs();
        }

        /** What the supplier asks for all packs, in the offer's currency. */
        public BigDecimal goods() {
            return cost.goodsQuoted();
        }

        /** The unit of the pack in words. */
        public String unit() {
            Measure unit = listing.offer().packUnit();
            return unit.isCount() && unit.isBase() ? "pieces" : unit.symbol();
        }

        /** The pack in words: {@code 25 kg}. */
        public String pack() {
            return Decimals.plain(listing.offer().packSize().value()) + " " + unit();
        }

        /** The supplier's number for the item; blank if unknown. */
        public String article() {
            return listing.offer().terms().listed().article();
        }

        /** The supplier's name for the item, with the buyer's own on a second line if it is another. */
        public String item() {
            String own = listing.offer().item();
            String theirs = listing.offer().terms().listed().name();
            return theirs.isEmpty() || theirs.equals(own) ? own : theirs + "\n(our name: " + own + ")";
        }
    }
}
