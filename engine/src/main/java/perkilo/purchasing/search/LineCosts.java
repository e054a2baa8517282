package perkilo.purchasing.search;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.purchasing.DutyBasis;
import perkilo.purchasing.Quote;
import perkilo.purchasing.Tier;
import perkilo.purchasing.Vendor;

/**
 * What a line of one quote costs and counts, by its size in steps (a step is the smallest multiple of packs).
 *
 * <p>Goods are rounded as they are invoiced, so that sums over lines are exact but for the last bits of a
 * {@code double}.
 */
final class LineCosts {
    /** The longest line, in steps, whose figures are kept; those of longer lines are computed each time. */
    private static final int KEPT = 1 << 14;

    final long fewestSteps;

    private final Quote quote;
    private final long[] tierFrom;
    /** The rate of duty, as a fraction. */
    final double duty;

    private final double perGoods;
    /** Home currency for one unit of the quote's currency. */
    private final double toHome;

    private final double perStep;
    private final double dutyPerGoods;
    private final double dutyPerStep;
    private final double goodsForWhole;
    private final long[] stepPrice;
    private final int priceScale;
    private final boolean rounds;
    /** The amount that goods are rounded to, in units of the finest price. */
    private final long roundTo;
    /** How many units that goods are counted in make up one unit of money. */
    private final double perMinorUnit;

    /** By price break: steps that make up the whole minimum. */
    private final List<@Nullable Long> forWhole = new ArrayList<>();

    private double[] landed = {};
    private double[] shares = {};

    LineCosts(Quote quote, Vendor vendor) {
        this.quote = quote;
        this.fewestSteps = steps(quote, quote.smallestLine());
        List<Tier> tiers = quote.tiers();
        tierFrom = tiers.stream().mapToLong(tier -> steps(quote, tier.from())).toArray();
        int finest = tiers.stream()
                .mapToInt(tier -> tier.pricePerPack().stripTrailingZeros().scale())
                .max()
                .orElse(0);
        priceScale = Math.max(0, finest);
        stepPrice = stepPrices(tiers);
        rounds = minorDigits() < priceScale;
        roundTo = rounds ? (long) Math.pow(10, priceScale - minorDigits()) : 1;
        perMinorUnit = Math.pow(10, rounds ? minorDigits() : priceScale);
        double insured = 1 + vendor.insurance().doubleValue();
        double margin = 1 + vendor.margin().doubleValue();
        duty = quote.duty().doubleValue();
        boolean onTransport = vendor.dutyBasis() == DutyBasis.CIF;
        double toVendor = quote.toVendorCurrency().doubleValue();
        toHome = toVendor * vendor.toHome().doubleValue();
        perGoods = toHome * (insured * margin + duty * (onTransport ? insured : 1));
        double kg = quote.kgPerPack().doubleValue() * quote.multiple();
        perStep = kg
                * vendor.freightPerKg().doubleValue()
                * vendor.toHome().doubleValue()
                * (margin + (onTransport ? duty : 0));
        dutyPerGoods = toHome * duty * (onTransport ? insured : 1);
        dutyPerStep = onTransport
                ? kg * vendor.freightPerKg().doubleValue() * vendor.toHome().doubleValue() * duty
                : 0;
        double minimum = vendor.minimumOrderValue().doubleValue();
        boolean counts = vendor.refusesSmallOrders()
                || (minimum > 0 && vendor.smallOrderCost(BigDecimal.ZERO).signum() > 0);
        goodsForWhole = counts ? minimum / toVendor : 0;
        for (int tier = 0; tier < tiers.size(); tier++) {
            forWhole.add(countForWhole(tier));
        }
    }

    private static long steps(Quote quote, BigDecimal quantity) {
        return quote.packsFor(quantity) / quote.multiple();
    }

    private long[] stepPrices(List<Tier> tiers) {
        BigDecimal multiple = BigDecimal.valueOf(quote.multiple());
        BigInteger most = BigInteger.valueOf(Long.MAX_VALUE / 4_000_000);
        long[] prices = new long[tiers.size()];
        for (int i = 0; i < prices.length; i++) {
            BigInteger exact = tiers.get(i)
                    .pricePerPack()
                    .setScale(priceScale)
                    .multiply(multiple)
                    .unscaledValue();
            prices[i] = exact.compareTo(most) > 0 ? -1 : exact.longValue();
        }
        return prices;
    }

    /** Keeps the figures of lines of up to {@code steps}. */
    void keep(long steps) {
        int from = landed.length;
        int to = (int) Math.min(KEPT, steps + 1);
        if (to > from) {
            double[] more = Arrays.copyOf(landed, to);
            double[] moreShares = Arrays.copyOf(shares, to);
            for (int n = from; n < to; n++) {
                more[n] = landedOf(n);
                moreShares[n] = shareOf(n);
            }
            landed = more;
            shares = moreShares;
        }
    }

    /** The cost of a line in home currency, without the order's charges; infinite below the quote's smallest line. */
    double landed(long steps) {
        return steps < landed.length ? landed[(int) steps] : landedOf(steps);
    }

    private double landedOf(long steps) {
        return steps < fewestSteps ? Double.POSITIVE_INFINITY : goods(steps) * perGoods + steps * perStep;
    }

    /** The share of the vendor's minimum order value that a line reaches, at most one; zero without a minimum. */
    double share(long steps) {
        return steps < shares.length ? shares[(int) steps] : shareOf(steps);
    }

    private double shareOf(long steps) {
        return goodsForWhole == 0 || steps < fewestSteps ? 0 : Math.min(1, goods(steps) / goodsForWhole);
    }

    /** The duty in the cost of a line, in home currency. */
    double duties(long steps) {
        return steps < fewestSteps ? 0 : goods(steps) * dutyPerGoods + steps * dutyPerStep;
    }

    /** What one unit of goods in home currency adds to the duty on a line. */
    double dutiesPerGoods() {
        return dutyPerGoods / toHome;
    }

    /** The value of a line's goods in home currency. */
    double goodsAtHome(long steps) {
        return steps < fewestSteps ? 0 : goods(steps) * toHome;
    }

    /** The lowest value of the goods of a line of {@code from} to {@code to} steps, in home currency. */
    double leastGoods(long from, long to) {
        if (from < Math.max(1, fewestSteps) || to < fewestSteps) {
            return 0;
        }
        double least = goodsAtHome(from);
        for (int tier = 0; tier < tiers(); tier++) {
            if (tierFrom[tier] > from && tierFrom[tier] <= to) {
                least = Math.min(least, goodsAtHome(tierFrom[tier]));
            }
        }
        return least;
    }

    /** The highest value of the goods of a line of {@code from} to {@code to} steps, in home currency. */
    double mostGoods(long from, long to) {
        double most = to == 0 ? 0 : goodsAtHome(to);
        for (int tier = 0; tier < tiers(); tier++) {
            if (tierEnd(tier) >= from && tierEnd(tier) < to) {
                most = Math.max(most, goodsAtHome(tierEnd(tier)));
            }
        }
        return most;
    }

    /** The lowest value of a line's goods in home currency. */
    double leastGoods() {
        double least = Double.POSITIVE_INFINITY;
        for (int tier = 0; tier < tiers(); tier++) {
            least = tierStart(tier) <= tierEnd(tier) ? Math.min(least, goodsAtHome(tierStart(tier))) : least;
        }
        return least;
    }

    /** The most by which rounding moves the cost of a line. */
    double roundingError() {
        return rounds ? 0.5 * perGoods / perMinorUnit : 0;
    }

    /** The most by which rounding moves the value of a line's goods in home currency. */
    double roundingOfGoods() {
        return rounds ? 0.5 * toHome / perMinorUnit : 0;
    }

    /** What one unit of goods in home currency adds to the landed cost of a line. */
    double landedPerGoods() {
        return perGoods / toHome;
    }

    /** The value of goods in home currency that makes up the whole minimum order value; zero without a minimum. */
    double goodsOfWhole() {
        return goodsForWhole * toHome;
    }

    /**
     * The fewest steps at the price of {@code tier} whose goods reach a value in home currency; zero if they are free.
     */
    long stepsFor(double goodsAtHome, int tier) {
        double perStepPrice = quote.tiers().get(tier).pricePerPack().doubleValue() * quote.multiple() * toHome;
        double steps = perStepPrice == 0 ? 0 : Math.ceil((goodsAtHome + roundingOfGoods()) / perStepPrice);
        return (long) Math.min(steps, 1e9);
    }

    /** What goods that make up the whole minimum order value cost, landed and without freight by weight. */
    double landedOfWhole() {
        return goodsForWhole * perGoods;
    }

    /** Whether a line's cost is linear within a price break, but for rounding. */
    boolean straight() {
        return !rounds;
    }

    /** The first line after {@code steps} that begins another linear piece: a price break, or the whole minimum. */
    long nextPiece(long steps) {
        int tier = tierFor(steps);
        long next = tierEnd(tier) + 1;
        Long whole = stepsForWhole(tier);
        return whole != null && whole > 0 && steps < whole ? Math.min(next, Math.max(steps + 1, whole - 2)) : next;
    }

    private int minorDigits() {
        Integer digits = quote.minorDigits();
        return digits == null ? priceScale : digits;
    }

    private double goods(long steps) {
        int tier = tierFor(steps);
        long price = stepPrice[tier];
        if (price < 0 || steps > 4_000_000) {
            return quote.goods(steps * quote.multiple()).doubleValue();
        }
        long exact = price * steps;
        long invoiced = rounds ? (exact + roundTo / 2) / roundTo : exact;
        return invoiced / perMinorUnit;
    }

    private int tierFor(long steps) {
        int tier = 0;
        while (tier + 1 < tierFrom.length && tierFrom[tier + 1] <= steps) {
            tier++;
        }
        return tier;
    }

    int tiers() {
        return tierFrom.length;
    }

    /** The fewest steps of a line that gets the price of {@code tier} and meets the quote's minimum. */
    long tierStart(int tier) {
        return Math.max(fewestSteps, tierFrom[tier]);
    }

    /** The most steps of a line that gets the price of {@code tier}. */
    long tierEnd(int tier) {
        return tier + 1 < tierFrom.length ? tierFrom[tier + 1] - 1 : Long.MAX_VALUE / 2;
    }

    /**
     * The fewest steps that make up the vendor's whole minimum order value at the price of {@code tier}.
     *
     * @return zero if there is no minimum; null if the goods are free
     */
    @Nullable Long stepsForWhole(int tier) {
        return forWhole.get(tier);
    }

    private @Nullable Long countForWhole(int tier) {
        if (goodsForWhole == 0) {
            return 0L;
        }
        BigDecimal price = quote.tiers().get(tier).pricePerPack();
        if (price.signum() == 0) {
            return null;
        }
        BigDecimal roundedUp = BigDecimal.ONE.movePointLeft(minorDigits());
        BigDecimal perStepPrice = price.multiply(BigDecimal.valueOf(quote.multiple()));
        return BigDecimal.valueOf(goodsForWhole)
                .add(roundedUp)
                .divide(perStepPrice, 0, RoundingMode.CEILING)
                .longValueExact();
    }
}
