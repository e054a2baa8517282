package perkilo.purchasing.search.quick;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.concurrent.atomic.AtomicReferenceArray;
import org.jspecify.annotations.Nullable;
import perkilo.purchasing.DutyBasis;
import perkilo.purchasing.OwnCost;
import perkilo.purchasing.Quote;
import perkilo.purchasing.Tier;
import perkilo.purchasing.Vendor;

/**
 * The cost of a line of one quote, without the charges of the order as a whole; in {@code double}s, for speed.
 *
 * <p>The arithmetic is that of {@link perkilo.purchasing.PlanCost}, which costs the resulting plan again, exactly. The
 * numbers of packs at which a price starts are computed exactly, once.
 */
final class PackPrice {

    /** A quotient that is above a whole number by less than this counts as that number; callers may check exactly. */
    private static final double WHOLE = 1e-9;

    /** Exact costs are remembered for fewer packs than this: small numbers come up again and again. */
    private static final int MOST_PACKS = 256;

    private final Quote quote;
    private final Vendor vendor;
    private volatile @Nullable AtomicReferenceArray<OwnCost> exactCosts;
    private final int index;
    private final double packSize;
    private final double step;
    private final double[] tierPrice;
    private final long[] tierStart;
    private final long[] fewest;
    private final double rounding;
    private final double goodsFactor;
    private final double perPack;
    private final double toVendor;
    private final double toHome;
    private final double dutyRate;
    private final double lowestRate;
    private final double roundedOff;

    /**
     * Prices of a quote.
     *
     * @param index of the quote among those of its item
     */
    PackPrice(Quote quote, int index, Vendor vendor) {
        this.quote = quote;
        this.vendor = vendor;
        this.index = index;
        this.packSize = quote.packSize().doubleValue();
        this.step = packSize * quote.multiple();
        List<Tier> tiers = quote.tiers();
        this.tierPrice = new double[tiers.size()];
        this.tierStart = new long[tiers.size()];
        this.fewest = new long[tiers.size()];
        for (int at = 0; at < tiers.size(); at++) {
            Tier tier = tiers.get(at);
            tierPrice[at] = tier.pricePerPack().doubleValue();
            tierStart[at] = tier.from()
                    .divide(quote.packSize(), 0, RoundingMode.CEILING)
                    .longValueExact();
            fewest[at] = quote.packsFor(quote.smallestLine().max(tier.from()));
        }
        Integer digits = quote.minorDigits();
        this.rounding = digits == null ? 0 : Math.pow(10, digits);
        double duty = quote.duty().doubleValue();
        this.dutyRate = duty;
        double paid = 1 + vendor.margin().doubleValue();
        double dutyOnMore = vendor.dutyBasis() == DutyBasis.CIF ? duty : 0;
        double insurance = vendor.insurance().doubleValue();
        this.toHome = vendor.toHome().doubleValue();
        this.toVendor = quote.toVendorCurrency().doubleValue();
        this.goodsFactor = toVendor * toHome * ((1 + insurance) * paid + duty + dutyOnMore * insurance);
        double freight = quote.kgPerPack().doubleValue() * vendor.freightPerKg().doubleValue();
        this.perPack = freight * (paid + dutyOnMore) * toHome;
        this.lowestRate = lowest();
        this.roundedOff = isWholeMinorUnits() ? 0 : goodsFactor / 2 / rounding;
    }

    int index() {
        return index;
    }

    int vendor() {
        return quote.vendor();
    }

    Quote quote() {
        return quote;
    }

    /** The rate of duty, as a fraction. */
    double dutyRate() {
        return dutyRate;
    }

    /** The least value of the goods of a line, in the vendor's currency. */
    double leastGoods() {
        double least = Double.POSITIVE_INFINITY;
        for (long packs : fewest) {
            least = Math.min(least, goods(packs));
        }
        return least;
    }

    double packSize() {
        return packSize;
    }

    /** The number of packs in one step. */
    int multiple() {
        return quote.multiple();
    }

    /** The number of price breaks. */
    int tiers() {
        return tierPrice.length;
    }

    /** The fewest packs that may be ordered. */
    long fewest() {
        return fewest[0];
    }

    /** The fewest packs that have the price of a break. */
    long fewest(int tier) {
        return fewest[tier];
    }

    /** Landed cost of a line in home currency. */
    double cost(long packs) {
        return goodsQuoted(packs) * goodsFactor + perPack * packs;
    }

    /** The exact cost of a line. */
    OwnCost exactCost(long packs) {
        if (packs >= MOST_PACKS) {
            return OwnCost.of(quote, vendor, packs);
        }
        AtomicReferenceArray<OwnCost> costs = exactCosts();
        OwnCost known = costs.get((int) packs);
        if (known == null) {
            known = OwnCost.of(quote, vendor, packs);
            costs.set((int) packs, known);
        }
        return known;
    }

    /** The remembered exact costs; created on first use, because most quotes are never bought from. */
    private AtomicReferenceArray<OwnCost> exactCosts() {
        AtomicReferenceArray<OwnCost> known = exactCosts;
        if (known == null) {
            known = new AtomicReferenceArray<>(MOST_PACKS);
            exactCosts = known;
        }
        return known;
    }

    /** The value that counts towards the minimum order value, in the vendor's currency. */
    double goods(long packs) {
        return goodsQuoted(packs) * toVendor;
    }

    /** The lowest landed cost of one unit at any quantity, before invoices are rounded. */
    double lowestRate() {
        return lowestRate;
    }

    /** The most by which rounding an invoice may lower the landed cost of a line. */
    double roundedOff() {
        return roundedOff;
    }

    /**
     * What more goods in a line cost at least, as a part of their value: 1 or more counts as 1; zero or less if they
     * may be free.
     *
     * @param credit the value of one unit left over, in home currency
     */
    double netOfMore(double credit) {
        if (credit == 0) {
            return 1;
        }
        double least = 1;
        for (double price : tierPrice) {
            double goods = price * toVendor * toHome;
            double net = price * goodsFactor + perPack - credit * packSize - minorUnit();
            least = goods > 0 ? Math.min(least, net / goods) : 0;
        }
        return least;
    }

    /** The landed cost of one minor unit of the goods' currency; zero if invoices are not rounded. */
    double minorUnit() {
        return rounding == 0 ? 0 : goodsFactor / rounding;
    }

    /** About the fewest packs that cover a quantity and reach a price break; a rounding error may be missing. */
    long packs(int tier, double quantity) {
        long steps = (long) Math.ceil(quantity / step - WHOLE);
        return Math.max(fewest[tier], steps * quote.multiple());
    }

    /**
     * The fewest packs that cover a quantity, exactly.
     *
     * @param about the same quantity as a {@code double}
     */
    long fewest(BigDecimal quantity, double about) {
        double steps = about / step;
        boolean isClear = steps < 1e6 && Math.abs(steps - Math.rint(steps)) > WHOLE;
        return isClear ? (long) Math.ceil(steps) * quote.multiple() : quote.packsFor(quantity);
    }

    /** Whether a line of so many packs has a price. */
    boolean isPriced(long packs) {
        return packs >= tierStart[0];
    }

    private double goodsQuoted(long packs) {
        int tier = tierStart.length - 1;
        while (tierStart[tier] > packs) {
            tier--;
        }
        double exact = tierPrice[tier] * packs;
        return rounding == 0 ? exact : Math.floor(exact * rounding + 0.5 + 1e-7) / rounding;
    }

    private double lowest() {
        double lowest = Double.POSITIVE_INFINITY;
        for (double price : tierPrice) {
            lowest = Math.min(lowest, (price * goodsFactor + perPack) / packSize);
        }
        return lowest;
    }

    /** Whether every number of packs costs whole minor units, so that rounding changes nothing. */
    private boolean isWholeMinorUnits() {
        Integer digits = quote.minorDigits();
        return digits == null
                || quote.tiers().stream()
                        .allMatch(
                                tier -> tier.pricePerPack().stripTrailingZeros().scale() <= digits);
    }
}
