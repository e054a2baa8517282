package perkilo.purchasing.search.quick;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import perkilo.purchasing.DutySpread;
import perkilo.purchasing.Vendor;

/**
 * The duty on the charges of orders, by vendor, beyond that at the lowest rate of the vendor's quotes.
 *
 * <p>An order's charges pay the average rate of its lines, weighted by goods value.
 */
final class ChargeDuty {

    /** With goods of so many times the most extra duty, more goods cost twice the duty that they save, or more. */
    private static final double WORTH = 2;

    private final boolean[] mixed;
    private final double[] lowest;
    private final double[] highest;
    private final double[] opening;
    private final double[] small;
    private final boolean[] byValue;
    /**
     * By vendor: up to goods of this value in a line, more than is needed may pay because it lowers the average rate;
     * in the vendor's currency. Where leftovers have a value, up to as many times as much as
     * {@link PackPrice#netOfMore} is below 1.
     *
     * <p>With goods G and charges K, goods x more lower the duty on K by less than K · (highest − lowest rate) · x / G.
     * They cost x or more, less the value of the leftover, so they pay only where G is below that duty.
     */
    private final double[] worthBuying;

    /**
     * The duty on the charges of some vendors.
     *
     * @param rates of duty by vendor
     * @param items all that is bought
     */
    ChargeDuty(List<Vendor> vendors, DutySpread[] rates, List<ItemCovers> items) {
        int count = vendors.size();
        mixed = new boolean[count];
        lowest = new double[count];
        highest = new double[count];
        opening = new double[count];
        small = new double[count];
        byValue = new boolean[count];
        worthBuying = new double[count];
        for (int v = 0; v < count; v++) {
            Vendor vendor = vendors.get(v);
            mixed[v] = vendor.hasMixedDutyOnCharges(rates[v]);
            if (mixed[v]) {
                lowest[v] = rates[v].lowest().doubleValue();
                highest[v] = rates[v].highest().doubleValue();
                opening[v] = perRate(vendor.openingCost(BigDecimal.ONE), vendor.openingCost(BigDecimal.ZERO));
                small[v] = perRate(vendor.smallOrderCost(BigDecimal.ONE), vendor.smallOrderCost(BigDecimal.ZERO));
                double least = leastWorth(v, items);
                double most = (opening[v] + small[v])
                        * (highest[v] - lowest[v])
                        / vendor.toHome().doubleValue();
                byValue[v] = least > 0;
                worthBuying[v] = least > WORTH * most ? 0 : WORTH * most;
            }
        }
    }

    private static double perRate(BigDecimal whole, BigDecimal none) {
        return whole.subtract(none).doubleValue();
    }

    /** The least value of a line, times what more goods cost at least; zero if more goods may be free. */
    private static double leastWorth(int vendor, List<ItemCovers> items) {
        double goods = Double.POSITIVE_INFINITY;
        double net = 1;
        for (ItemCovers item : items) {
            ItemPrices.Offered offered = item.offered();
            for (int at = 0; at < offered.count(); at++) {
                PackPrice price = offered.price(at);
                if (price.vendor() == vendor) {
                    goods = Math.min(goods, price.leastGoods());
                    net = Math.min(net, price.netOfMore(item.credit()));
                }
            }
        }
        return net <= 0 ? 0 : goods * net;
    }

    /** Whether the duty on a vendor's charges depends on the lines. */
    boolean isMixed(int vendor) {
        return mixed[vendor];
    }

    /**
     * The orders whose charges certainly pay duty that depends on the lines.
     *
     * @param set the vendors with an order, one bit each
     * @param small those who are paid for a small order, one bit each
     * @param measures get the measures of these orders, at the end
     */
    List<DutySearch.Order> orders(int set, int small, List<Measure> measures) {
        List<DutySearch.Order> orders = new ArrayList<>();
        for (int vendor = 0; vendor < mixed.length; vendor++) {
            double perRate = perRate(vendor, (small >> vendor & 1) == 1);
            if ((set >> vendor & 1) == 1 && perRate > 0) {
                orders.add(new DutySearch.Order(perRate, lowest[vendor], measures.size(), measures.size() + 1));
                measures.add(Measure.goods(vendor, worthBuying[vendor]));
                measures.add(Measure.duty(vendor));
            }
        }
        return orders;
    }

    /** Whether a mixed vendor of a set sells nothing for free, so that an average by goods value decides. */
    boolean isByValue(int set) {
        return IntStream.range(0, mixed.length)
                .allMatch(vendor -> (set >> vendor & 1) == 0 || !mixed[vendor] || byValue[vendor]);
    }

    /** What the charges of a mixed order pay for each unit of its average rate, in home currency. */
    private double perRate(int vendor, boolean isSmall) {
        return opening[vendor] + (isSmall ? small[vendor] : 0);
    }

    /**
     * What the charges of a mixed order pay beyond the lowest rate, in home currency.
     *
     * @param goods of the order
     * @param duty on the goods alone
     */
    double extra(int vendor, double goods, double duty, boolean isSmall) {
        double rate = goods == 0 ? highest[vendor] : duty / goods;
        return perRate(vendor, isSmall) * (rate - lowest[vendor]);
    }
}
