package perkilo.orderplan;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import perkilo.costing.Listing;
import perkilo.costing.Market;
import perkilo.model.Supplier;
import perkilo.offers.OrderDays;
import perkilo.purchasing.OrderCost;
import perkilo.purchasing.PurchasePlan;

/**
 * An order to one supplier on one day.
 *
 * @param supplier who gets it
 * @param period that the goods are bought for
 * @param orderBy the day to place it
 * @param arrivesOn the day on which the goods arrive: the supplier's lead time after {@code orderBy}
 * @param neededBy the first day on which a need uses the goods; if none does, the day that they are bought for
 * @param cost in the supplier's currency; landed in home currency
 * @param listings the offers of the lines, as many as lines, in the same order
 * @param prices the days on which orders can be placed at their prices, in the same order
 */
public record SupplierOrder(
        Supplier supplier,
        int period,
        LocalDate orderBy,
        LocalDate arrivesOn,
        LocalDate neededBy,
        OrderCost cost,
        List<Listing> listings,
        List<OrderDays> prices) {

    public SupplierOrder {
        listings = List.copyOf(listings);
        prices = List.copyOf(prices);
    }

    /**
     * An order of a plan.
     *
     * @param used by line of the plan: the first period in which its goods are used
     */
    static SupplierOrder of(Market market, HorizonProblem basis, OrderCost cost, Map<PurchasePlan.Line, Integer> used) {
        List<Listing> listings = cost.lines().stream()
                .map(line -> basis.listings().get(line.line().quote()))
                .toList();
        List<OrderDays> prices = cost.lines().stream()
                .map(line -> basis.days().get(line.line().quote()))
                .toList();
        int first = cost.lines().stream()
                .map(line -> used.get(line.line()))
                .filter(Objects::nonNull)
                .min(Comparator.naturalOrder())
                .orElse(cost.period());
        return new SupplierOrder(
                market.suppliers().get(basis.supplierOf(cost.vendor())),
                cost.period(),
                basis.orderDay(cost.vendor(), cost.period()),
                basis.arrival(cost.lines().get(0).line()),
                basis.horizon().day(first),
                cost,
                listings,
                prices);
    }

    /** The total payment for it, in home currency. */
    public BigDecimal landed() {
        return cost.landed();
    }

    private static boolean endsBefore(OrderDays price, LocalDate day) {
        return price.last() != null && day.isAfter(price.last());
    }

    /** The lines whose offers have expired when the order must be placed, by index. */
    List<Integer> expiredOffers() {
        return IntStream.range(0, listings.size())
                .filter(index -> endsBefore(prices.get(index), orderBy))
                .boxed()
                .toList();
    }
}
