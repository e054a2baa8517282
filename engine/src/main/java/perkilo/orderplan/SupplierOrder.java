package perkilo.orderplan;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import perkilo.costing.Listing;
import perkilo.costing.Market;
import perkilo.model.Supplier;
import perkilo.offers.OrderDays;
import perkilo.purchasing.OrderCost;

/**
 * An order to one supplier for one month.
 *
 * @param supplier who gets it
 * @param period the month of the goods
 * @param orderBy the last day to place it: the supplier's lead time before {@code neededBy}, and not after the last day
 *     of a price in it that has a next price
 * @param neededBy the first day of that month
 * @param cost in the supplier's currency; landed in home currency
 * @param listings the offers of the lines, as many as lines, in the same order
 * @param prices the days on which orders can be placed at their prices, in the same order
 */
public record SupplierOrder(
        Supplier supplier,
        int period,
        LocalDate orderBy,
        LocalDate neededBy,
        OrderCost cost,
        List<Listing> listings,
        List<OrderDays> prices) {

    public SupplierOrder {
        listings = List.copyOf(listings);
        prices = List.copyOf(prices);
    }

    static SupplierOrder of(Market market, HorizonProblem basis, OrderCost cost) {
        Supplier supplier = market.suppliers().get(cost.vendor());
        List<Listing> listings = cost.lines().stream()
                .map(line -> basis.listings().get(line.line().quote()))
                .toList();
        List<OrderDays> prices = cost.lines().stream()
                .map(line -> basis.days().get(line.line().quote()))
                .toList();
        LocalDate usual = basis.horizon().orderDay(cost.period(), HorizonProblem.leadDays(supplier));
        return new SupplierOrder(
                supplier,
                cost.period(),
                OrderMonths.orderBy(usual, prices),
                basis.horizon().firstDay(cost.period()),
                cost,
                listings,
                prices);
    }

    /** The total payment for it, in home currency. */
    public BigDecimal landed() {
        return cost.landed();
    }

    /** The lines whose prices begin only after the order must be placed because of another line, by index. */
    List<Integer> notYetOffered() {
        return IntStream.range(0, listings.size())
                .filter(index -> prices.get(index).first().isAfter(orderBy))
                .boxed()
                .toList();
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
