package perkilo.purchasing.search;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import perkilo.purchasing.DutyBasis;
import perkilo.purchasing.Need;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.Quote;
import perkilo.purchasing.Vendor;

/** Tries every plan of a small problem. It shares no arithmetic with the engine. */
final class BruteForce {
    /** Problems with more plans than this are not tried. */
    private static final double MOST = 3e5;

    private final PurchaseProblem problem;
    private final List<int[]> offers = new ArrayList<>();
    private final List<Integer> most = new ArrayList<>();
    private final int[] packs;
    private double best = Double.POSITIVE_INFINITY;

    private BruteForce(PurchaseProblem problem) {
        this.problem = problem;
        for (int q = 0; q < problem.quotes().size(); q++) {
            Quote quote = problem.quotes().get(q);
            for (int t = quote.firstPeriod(); t <= Math.min(problem.periods() - 1, quote.lastPeriod()); t++) {
                offers.add(new int[] {q, t});
                most.add(most(quote));
            }
        }
        packs = new int[offers.size()];
    }

    /**
     * The least objective of all plans.
     *
     * @return infinite if there is no plan; not a number if there are too many
     */
    static double cheapest(PurchaseProblem problem) {
        BruteForce all = new BruteForce(problem);
        double plans = 1;
        for (int n : all.most) {
            plans *= n + 1;
        }
        if (plans > MOST) {
            return Double.NaN;
        }
        all.choose(0);
        return all.best;
    }

    /** More than enough packs: for the whole need, all that is credited, and the whole minimum order value besides. */
    private int most(Quote quote) {
        Need need = problem.needs().get(quote.item());
        Vendor vendor = problem.vendorOf(quote);
        BigDecimal wanted = need.total()
                .add(need.creditable())
                .max(quote.minimum())
                .max(quote.tiers().get(quote.tiers().size() - 1).from());
        int packsToCover =
                wanted.divide(quote.packSize(), 0, RoundingMode.CEILING).intValue();
        BigDecimal price =
                quote.tiers().get(quote.tiers().size() - 1).pricePerPack().multiply(quote.toVendorCurrency());
        int packsForMinimum = vendor.minimumOrderValue()
                .add(BigDecimal.ONE)
                .divide(price.max(new BigDecimal("0.5")), 0, RoundingMode.CEILING)
                .intValue();
        int enough = Math.max(packsToCover, vendor.minimumOrderValue().signum() > 0 ? packsForMinimum : 0);
        return enough + quote.multiple();
    }

    private void choose(int offer) {
        if (offer == packs.length) {
            if (covers()) {
                best = Math.min(best, cost());
            }
            return;
        }
        Quote quote = problem.quotes().get(offers.get(offer)[0]);
        for (int n = 0; n <= most.get(offer); n += quote.multiple()) {
            packs[offer] = n;
            BigDecimal quantity = quote.packSize().multiply(BigDecimal.valueOf(n));
            boolean tooSmall = quantity.compareTo(quote.minimum()) < 0
                    || quantity.compareTo(quote.tiers().get(0).from()) < 0;
            if (n == 0 || !tooSmall) {
                choose(offer + 1);
            }
        }
        packs[offer] = 0;
    }

    private boolean covers() {
        for (int i = 0; i < problem.needs().size(); i++) {
            if (new Lots(i).shortOf() > 1e-9) {
                return false;
            }
        }
        return true;
    }

    private double cost() {
        int vendors = problem.vendors().size();
        double total = 0;
        for (int t = 0; t < problem.periods(); t++) {
            double outlay = 0;
            for (int v = 0; v < vendors; v++) {
                outlay += order(v, t);
            }
            if (problem.cashPerPeriod() != null
                    && outlay > problem.cashPerPeriod().doubleValue() + 1e-9) {
                return Double.POSITIVE_INFINITY;
            }
            total += outlay;
        }
        if (problem.cashTotal() != null && total > problem.cashTotal().doubleValue() + 1e-9) {
            return Double.POSITIVE_INFINITY;
        }
        for (int i = 0; i < problem.needs().size(); i++) {
            Lots lots = new Lots(i);
            Need need = problem.needs().get(i);
            lots.shortOf();
            total += lots.kept * need.holdingPerUnit().doubleValue();
            total -= Math.min(lots.left(), need.creditable().doubleValue())
                    * need.creditPerUnit().doubleValue();
        }
        return total;
    }

    private double order(int vendorIndex, int period) {
        Vendor vendor = problem.vendors().get(vendorIndex);
        double goods = 0;
        double kg = 0;
        double duty = 0;
        boolean placed = false;
        double insurance = vendor.insurance().doubleValue();
        double perKg = vendor.freightPerKg().doubleValue();
        boolean cif = vendor.dutyBasis() == DutyBasis.CIF;
        for (int o = 0; o < packs.length; o++) {
            Quote quote = problem.quotes().get(offers.get(o)[0]);
            if (packs[o] == 0 || quote.vendor() != vendorIndex || offers.get(o)[1] != period) {
                continue;
            }
            placed = true;
            double line = goods(quote, packs[o]);
            double weight = quote.kgPerPack().doubleValue() * packs[o];
            goods += line;
            kg += weight;
            duty += quote.duty().doubleValue() * (cif ? line * (1 + insurance) + perKg * weight : line);
        }
        if (!placed) {
            return 0;
        }
        double charge = 0;
        if (goods < vendor.minimumOrderValue().doubleValue() - 1e-9) {
            BigDecimal small = vendor.smallOrderCharge();
            charge = small == null ? Double.POSITIVE_INFINITY : small.doubleValue();
        }
        double perOrder = vendor.freightPerOrder().doubleValue();
        duty += vendor.duty().doubleValue() * (charge + (cif ? perOrder : 0));
        double invoiced = goods * (1 + insurance) + charge + perOrder + perKg * kg;
        return (invoiced * (1 + vendor.margin().doubleValue()) + duty)
                * vendor.toHome().doubleValue();
    }

    private static double goods(Quote quote, int packs) {
        BigDecimal quantity = quote.packSize().multiply(BigDecimal.valueOf(packs));
        BigDecimal price = quote.tiers().get(0).pricePerPack();
        for (var tier : quote.tiers()) {
            if (tier.from().compareTo(quantity) <= 0) {
                price = tier.pricePerPack();
            }
        }
        BigDecimal goods = price.multiply(BigDecimal.valueOf(packs));
        Integer digits = quote.minorDigits();
        return (digits == null ? goods : goods.setScale(digits, RoundingMode.HALF_UP))
                .multiply(quote.toVendorCurrency())
                .doubleValue();
    }

    /**
     * The lots of one item, used up oldest expiry first, and what is bought last: last period, quantity, bought,
     * arrival.
     */
    private final class Lots {
        private final List<double[]> lots = new ArrayList<>();
        private final int item;
        private double kept;

        Lots(int item) {
            this.item = item;
            for (Need.Lot lot : problem.needs().get(item).stock()) {
                lots.add(new double[] {
                    last(lot.arrival(), lot.usablePeriods()), lot.quantity().doubleValue(), 0, lot.arrival()
                });
            }
        }

        private static double last(int arrival, int usable) {
            return usable == Need.UNLIMITED ? Double.POSITIVE_INFINITY : (double) arrival + usable - 1;
        }

        double shortOf() {
            Need need = problem.needs().get(item);
            double missing = 0;
            for (int t = 0; t < problem.periods(); t++) {
                arrive(need, t);
                double wanted = need.perPeriod().get(t).doubleValue();
                for (double[] lot : lots) {
                    if (lot[3] <= t && lot[0] >= t) {
                        double used = Math.min(wanted, lot[1]);
                        lot[1] -= used;
                        wanted -= used;
                    }
                }
                missing = Math.max(missing, wanted);
                int now = t;
                kept += lots.stream()
                        .filter(lot -> lot[3] <= now)
                        .mapToDouble(lot -> lot[1])
                        .sum();
            }
            return missing;
        }

        private void arrive(Need need, int period) {
            for (int o = 0; o < packs.length; o++) {
                Quote quote = problem.quotes().get(offers.get(o)[0]);
                if (quote.item() == item && offers.get(o)[1] == period && packs[o] > 0) {
                    lots.add(new double[] {
                        last(period, need.usablePeriods()), quote.packSize().doubleValue() * packs[o], 1, period
                    });
                }
            }
            lots.sort(Comparator.comparingDouble((double[] lot) -> lot[0]).thenComparingDouble(lot -> lot[2]));
        }

        double left() {
            return lots.stream()
                    .filter(lot -> lot[2] == 1 && lot[0] >= problem.periods())
                    .mapToDouble(lot -> lot[1])
                    .sum();
        }
    }
}
