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
    private final List<Offer> offers = new ArrayList<>();
    private final List<Item> items = new ArrayList<>();
    private final int[] packs;
    private double best = Double.POSITIVE_INFINITY;

    private BruteForce(PurchaseProblem problem) {
        this.problem = problem;
        for (Quote quote : problem.quotes()) {
            for (int t = quote.firstPeriod(); t <= Math.min(problem.periods() - 1, quote.lastPeriod()); t++) {
                offers.add(new Offer(quote, t, most(quote)));
            }
        }
        for (int i = 0; i < problem.needs().size(); i++) {
            items.add(new Item(problem, i, offers));
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
        for (Offer offer : all.offers) {
            plans *= offer.most + 1;
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

    private void choose(int at) {
        if (at == packs.length) {
            if (covers()) {
                best = Math.min(best, cost());
            }
            return;
        }
        Offer offer = offers.get(at);
        for (int n = 0; n <= offer.most; n += offer.quote.multiple()) {
            packs[at] = n;
            if (offer.allowed[n]) {
                choose(at + 1);
            }
        }
        packs[at] = 0;
    }

    private boolean covers() {
        for (Item item : items) {
            item.use(packs);
            if (item.missing > 1e-9) {
                return false;
            }
        }
        return true;
    }

    /** What the plan costs whose goods the items have used last. */
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
        for (Item item : items) {
            total += item.kept * item.need.holdingPerUnit().doubleValue();
            total -= Math.min(item.left(), item.need.creditable().doubleValue())
                    * item.need.creditPerUnit().doubleValue();
        }
        return total;
    }

    private double order(int vendorIndex, int period) {
        Vendor vendor = problem.vendors().get(vendorIndex);
        double goods = 0;
        double kg = 0;
        double duty = 0;
        double weighted = 0;
        double rates = 0;
        int lines = 0;
        boolean placed = false;
        double insurance = vendor.insurance().doubleValue();
        double perKg = vendor.freightPerKg().doubleValue();
        boolean cif = vendor.dutyBasis() == DutyBasis.CIF;
        for (int o = 0; o < packs.length; o++) {
            Offer offer = offers.get(o);
            if (packs[o] == 0 || offer.quote.vendor() != vendorIndex || offer.period != period) {
                continue;
            }
            placed = true;
            double line = offer.goods[packs[o]];
            double weight = offer.kgPerPack * packs[o];
            goods += line;
            weighted += offer.duty * line;
            rates += offer.duty;
            lines++;
            kg += weight;
            duty += offer.duty * (cif ? line * (1 + insurance) + perKg * weight : line);
        }
        if (!placed) {
            return 0;
        }
        double average = goods == 0 ? rates / lines : weighted / goods;
        double charge = 0;
        if (goods < vendor.minimumOrderValue().doubleValue() - 1e-9) {
            BigDecimal small = vendor.smallOrderCharge();
            charge = small == null ? Double.POSITIVE_INFINITY : small.doubleValue();
        }
        double perOrder = vendor.freightPerOrder().doubleValue();
        duty += average * (charge + (cif ? perOrder : 0));
        double invoiced = goods * (1 + insurance) + charge + perOrder + perKg * kg;
        return (invoiced * (1 + vendor.margin().doubleValue()) + duty)
                * vendor.toHome().doubleValue();
    }

    /** A quote in one period, with what each number of packs costs. */
    private static final class Offer {
        private final Quote quote;
        private final int period;
        private final int most;
        private final boolean[] allowed;
        private final double[] goods;
        private final double packSize;
        private final double kgPerPack;
        private final double duty;

        Offer(Quote quote, int period, int most) {
            this.quote = quote;
            this.period = period;
            this.most = most;
            allowed = new boolean[most + 1];
            goods = new double[most + 1];
            packSize = quote.packSize().doubleValue();
            kgPerPack = quote.kgPerPack().doubleValue();
            duty = quote.duty().doubleValue();
            for (int n = 0; n <= most; n++) {
                BigDecimal quantity = quote.packSize().multiply(BigDecimal.valueOf(n));
                boolean tooSmall = quantity.compareTo(quote.minimum()) < 0
                        || quantity.compareTo(quote.tiers().get(0).from()) < 0;
                allowed[n] = n == 0 || !tooSmall;
                goods[n] = goods(quote, n);
            }
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
    }

    /** One item with the lots that it is taken from: oldest expiry first, and what is bought last. */
    private static final class Item {
        private final Need need;
        private final double[] wanted;
        private final List<Lot> lots = new ArrayList<>();
        private double missing;
        private double kept;

        Item(PurchaseProblem problem, int item, List<Offer> offers) {
            need = problem.needs().get(item);
            wanted = need.perPeriod().stream()
                    .mapToDouble(BigDecimal::doubleValue)
                    .toArray();
            for (Need.Lot lot : need.stock()) {
                lots.add(new Lot(
                        lot.arrival(), lot.usablePeriods(), -1, lot.quantity().doubleValue()));
            }
            for (int o = 0; o < offers.size(); o++) {
                Offer offer = offers.get(o);
                if (offer.quote.item() == item) {
                    lots.add(new Lot(offer.period, need.usablePeriods(), o, offer.packSize));
                }
            }
            lots.sort(Comparator.comparingDouble((Lot lot) -> lot.last).thenComparing(Lot::bought));
        }

        /** Uses stock and what a plan buys, and notes what is missing in the worst period and what is kept over all. */
        void use(int[] packs) {
            missing = 0;
            kept = 0;
            for (Lot lot : lots) {
                lot.left = lot.bought() ? lot.size * packs[lot.offer] : lot.size;
            }
            for (int t = 0; t < wanted.length; t++) {
                double open = wanted[t];
                double closing = 0;
                for (Lot lot : lots) {
                    if (lot.first <= t) {
                        if (lot.last >= t) {
                            double used = Math.min(open, lot.left);
                            lot.left -= used;
                            open -= used;
                        }
                        closing += lot.left;
                    }
                }
                missing = Math.max(missing, open);
                kept += closing;
            }
        }

        /** What is left of purchases and can still be used. */
        double left() {
            double left = 0;
            for (Lot lot : lots) {
                left += lot.bought() && lot.last >= wanted.length ? lot.left : 0;
            }
            return left;
        }
    }

    /** Goods that come together. */
    private static final class Lot {
        private final int first;
        private final double last;
        private final int offer;
        private final double size;
        private double left;

        /**
         * Goods with all of them left.
         *
         * @param offer where they are bought; -1 for stock
         * @param size of one pack, or all of the stock
         */
        Lot(int first, int usable, int offer, double size) {
            this.first = first;
            this.last = usable == Need.UNLIMITED ? Double.POSITIVE_INFINITY : (double) first + usable - 1;
            this.offer = offer;
            this.size = size;
        }

        boolean bought() {
            return offer >= 0;
        }
    }
}
