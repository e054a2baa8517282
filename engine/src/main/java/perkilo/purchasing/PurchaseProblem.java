package perkilo.purchasing;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Everything that the choice of a purchase depends on: needs, vendors and quotes.
 *
 * @param periods at least one
 * @param needs one per item
 * @param vendors one per supplier
 * @param quotes what can be bought; several may be for the same item
 * @param cashPerPeriod the most that may be paid out in each period, in home currency; null for no limit
 * @param cashTotal the most that may be paid out in all, in home currency; null for no limit
 * @param orderCost what each order costs the buyer, beside what is paid for it; in home currency
 * @param payments which limits the payments for orders count towards; null if each period has one of its own, and its
 *     orders are paid in it
 */
public record PurchaseProblem(
        int periods,
        List<Need> needs,
        List<Vendor> vendors,
        List<Quote> quotes,
        @Nullable BigDecimal cashPerPeriod,
        @Nullable BigDecimal cashTotal,
        BigDecimal orderCost,
        @Nullable Payments payments) {

    public PurchaseProblem {
        needs = List.copyOf(needs);
        vendors = List.copyOf(vendors);
        quotes = List.copyOf(quotes);
        if (periods < 1) {
            throw new IllegalArgumentException("a purchase needs at least one period, but had " + periods);
        }
        for (int item = 0; item < needs.size(); item++) {
            requirePeriods(needs.get(item), periods);
        }
        for (int quote = 0; quote < quotes.size(); quote++) {
            requireWithin(quotes.get(quote), needs.size(), vendors.size());
        }
    }

    /** A problem in which an order costs nothing beside what is paid for it, and is paid in its period. */
    public PurchaseProblem(
            int periods,
            List<Need> needs,
            List<Vendor> vendors,
            List<Quote> quotes,
            @Nullable BigDecimal cashPerPeriod,
            @Nullable BigDecimal cashTotal) {
        this(periods, needs, vendors, quotes, cashPerPeriod, cashTotal, BigDecimal.ZERO, null);
    }

    /** The same problem with other needs. */
    public PurchaseProblem withNeeds(List<Need> others) {
        return new PurchaseProblem(periods, others, vendors, quotes, cashPerPeriod, cashTotal, orderCost, payments);
    }

    /** The same problem with other vendors and quotes. */
    public PurchaseProblem withOffers(List<Vendor> otherVendors, List<Quote> otherQuotes) {
        return new PurchaseProblem(
                periods, needs, otherVendors, otherQuotes, cashPerPeriod, cashTotal, orderCost, payments);
    }

    /** The same problem with other limits on cash; null for none. */
    public PurchaseProblem withCash(@Nullable BigDecimal perPeriod, @Nullable BigDecimal total) {
        return new PurchaseProblem(periods, needs, vendors, quotes, perPeriod, total, orderCost, payments);
    }

    /** The same problem with another cost of an order. */
    public PurchaseProblem withOrderCost(BigDecimal cost) {
        return new PurchaseProblem(periods, needs, vendors, quotes, cashPerPeriod, cashTotal, cost, payments);
    }

    /** How many limits on cash there are, besides that on everything. */
    public int cashLimits() {
        return payments == null ? periods : payments.limits();
    }

    /** The payments for an order. */
    public List<Payments.Part> paymentsFor(int vendor, int period) {
        return payments == null
                ? List.of(new Payments.Part(period, BigDecimal.ONE, BigDecimal.ONE))
                : payments.parts().get(vendor).get(period);
    }

    private static void requirePeriods(Need need, int periods) {
        if (need.perPeriod().size() != periods) {
            throw new IllegalArgumentException("%s has needs for %s periods, but there are %s"
                    .formatted(need.item(), need.perPeriod().size(), periods));
        }
    }

    private static void requireWithin(Quote quote, int needs, int vendors) {
        if (quote.item() < 0 || quote.item() >= needs || quote.vendor() < 0 || quote.vendor() >= vendors) {
            throw new IllegalArgumentException("a quote names item %s and vendor %s, but there are %s and %s"
                    .formatted(quote.item(), quote.vendor(), needs, vendors));
        }
    }

    /** A purchase in one period, without limits on cash. */
    public static PurchaseProblem once(List<Need> needs, List<Vendor> vendors, List<Quote> quotes) {
        return new PurchaseProblem(1, needs, vendors, quotes, null, null);
    }

    /** The vendor of a quote. */
    public Vendor vendorOf(Quote quote) {
        return vendors.get(quote.vendor());
    }
}
