package perkilo.purchasing.search;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import perkilo.purchasing.DutySpread;
import perkilo.purchasing.Payments;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.Quote;
import perkilo.purchasing.Vendor;

/**
 * The orders that may be placed, one for each vendor and period, and the cost of opening them in home currency.
 *
 * <p>For orders below the minimum there is one of three rules: no rule, a refusal, or a charge.
 */
final class Orders {
    final int periods;
    final int count;
    /** How many limits on cash there are, besides that on everything. */
    final int limits;
    /** The cost of opening the order, before any goods, with duty at the lowest rate of its lines. */
    final double[] opening;
    /** What is paid of it; the rest is the buyer's own cost. */
    final double[] openingPaid;
    /** The duty in it. */
    final double[] openingDuty;
    /** The duty in the charge on an order below the minimum. */
    final double[] smallDuty;
    /** The charge on an order below the minimum, with duty at the lowest rate; zero if there is no such charge. */
    final double[] smallCharge;
    /** The rates of duty that the order's lines may have. */
    final DutySpread[] duty;
    /** The part of the cost of opening that duty is charged on, without the duty. */
    final double[] dutiableOpening;
    /** The charge on an order below the minimum, without the duty. */
    final double[] dutiableSmall;

    /** The minimum order value in home currency. */
    final double[] minimum;

    private final boolean[] refusesSmall;

    private final boolean[] mixed;
    private final boolean anyMixed;

    private final PurchaseProblem problem;
    private final boolean limitsCash;

    Orders(PurchaseProblem problem) {
        this.problem = problem;
        List<Vendor> vendors = problem.vendors();
        List<Quote> quotes = problem.quotes();
        this.periods = problem.periods();
        this.limits = problem.cashLimits();
        limitsCash = problem.cashPerPeriod() != null || problem.cashTotal() != null;
        this.count = vendors.size() * periods;
        opening = new double[count];
        smallCharge = new double[count];
        openingPaid = new double[count];
        openingDuty = new double[count];
        smallDuty = new double[count];
        minimum = new double[count];
        refusesSmall = new boolean[count];
        duty = new DutySpread[count];
        dutiableOpening = new double[count];
        dutiableSmall = new double[count];
        mixed = new boolean[count];
        DutySpread[] spreads = DutySpread.of(vendors.size(), quotes);
        boolean any = false;
        for (int v = 0; v < vendors.size(); v++) {
            Vendor vendor = vendors.get(v);
            int from = of(v, 0);
            int to = from + periods;
            double paid = vendor.openingCost(spreads[v].lowest()).doubleValue();
            double withoutDuty = vendor.openingCost(BigDecimal.ZERO).doubleValue();
            Arrays.fill(openingPaid, from, to, paid);
            Arrays.fill(openingDuty, from, to, paid - withoutDuty);
            Arrays.fill(opening, from, to, paid + problem.orderCost().doubleValue());
            Arrays.fill(
                    minimum,
                    from,
                    to,
                    vendor.minimumOrderValue().multiply(vendor.toHome()).doubleValue());
            Arrays.fill(refusesSmall, from, to, vendor.refusesSmallOrders());
            if (vendor.minimumOrderValue().signum() > 0) {
                Arrays.fill(
                        smallCharge,
                        from,
                        to,
                        vendor.smallOrderCost(spreads[v].lowest()).doubleValue());
                Arrays.fill(
                        smallDuty,
                        from,
                        to,
                        smallCharge[from]
                                - vendor.smallOrderCost(BigDecimal.ZERO).doubleValue());
            }
            Arrays.fill(duty, from, to, spreads[v]);
            if (vendor.hasMixedDutyOnCharges(spreads[v])) {
                any = true;
                Arrays.fill(mixed, from, to, true);
                double toHome = vendor.toHome().doubleValue();
                double dutiable = vendor.dutiableCharges(BigDecimal.ZERO).doubleValue() * toHome;
                Arrays.fill(dutiableOpening, from, to, dutiable);
                double small = vendor.smallOrderCost(BigDecimal.ZERO).doubleValue()
                        / (1 + vendor.margin().doubleValue());
                Arrays.fill(dutiableSmall, from, to, vendor.minimumOrderValue().signum() > 0 ? small : 0);
            }
        }
        anyMixed = any;
    }

    /** Whether there is any limit on cash. */
    boolean limitsCash() {
        return limitsCash;
    }

    /** The payments for an order. */
    List<Payments.Part> payments(int order) {
        return problem.paymentsFor(order / periods, order % periods);
    }

    /**
     * Counts a payment towards the limits on cash.
     *
     * @param landed what is paid for an order, or for a part of it
     * @param duties the duty in it
     * @param paid by limit: what has been counted so far
     */
    void pay(int order, double landed, double duties, double[] paid) {
        for (Payments.Part part : payments(order)) {
            paid[part.limit()] += part.invoiced().doubleValue() * (landed - duties)
                    + part.duty().doubleValue() * duties;
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

    /** Whether duty on the order's charges depends on its lines, because they may have several rates. */
    boolean isMixed(int order) {
        return mixed[order];
    }

    /** Whether any order is mixed. */
    boolean anyMixed() {
        return anyMixed;
    }

    /** The most that an order's charges pay in duty beyond the lowest rate. */
    double mostExtraDuty(int order) {
        double spread = duty[order].highest().subtract(duty[order].lowest()).doubleValue();
        return (dutiableOpening[order] + dutiableSmall[order]) * spread;
    }

    /** Whether the value of the order's goods matters. */
    boolean hasMinimum(int order) {
        return refusesSmall[order] || smallCharge[order] > 0;
    }
}
