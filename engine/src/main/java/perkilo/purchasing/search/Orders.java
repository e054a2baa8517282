package perkilo.purchasing.search;

import java.util.Arrays;
import java.util.List;
import perkilo.purchasing.Vendor;

/**
 * The orders that may be placed, one for each vendor and period, and the cost of opening them in home currency.
 *
 * <p>For orders below the minimum there is one of three rules: no rule, a refusal, or a charge.
 */
final class Orders {
    final int periods;
    final int count;
    /** The cost of opening the order, before any goods. */
    final double[] opening;
    /** The charge on an order below the minimum; zero if there is no such charge. */
    final double[] smallCharge;

    /** The minimum order value in home currency. */
    final double[] minimum;

    private final boolean[] refusesSmall;

    Orders(List<Vendor> vendors, int periods) {
        this.periods = periods;
        this.count = vendors.size() * periods;
        opening = new double[count];
        smallCharge = new double[count];
        minimum = new double[count];
        refusesSmall = new boolean[count];
        for (int v = 0; v < vendors.size(); v++) {
            Vendor vendor = vendors.get(v);
            int from = of(v, 0);
            int to = from + periods;
            Arrays.fill(opening, from, to, vendor.openingCost().doubleValue());
            Arrays.fill(
                    minimum,
                    from,
                    to,
                    vendor.minimumOrderValue().multiply(vendor.toHome()).doubleValue());
            Arrays.fill(refusesSmall, from, to, vendor.refusesSmallOrders());
            if (vendor.minimumOrderValue().signum() > 0) {
                Arrays.fill(smallCharge, from, to, vendor.smallOrderCost().doubleValue());
            }
        }
    }

    int of(int vendor, int period) {
        return vendor * periods + period;
    }

    int period(int order) {
        return order % periods;
    }

    boolean refusesSmall(int order) {
        return refusesSmall[order];
    }

    boolean chargesSmall(int order) {
        return smallCharge[order] > 0;
    }

    /** Whether the value of the order's goods matters. */
    boolean hasMinimum(int order) {
        return refusesSmall[order] || smallCharge[order] > 0;
    }
}
