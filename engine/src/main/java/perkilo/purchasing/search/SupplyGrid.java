package perkilo.purchasing.search;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import perkilo.purchasing.Need;

/**
 * The positions that the supply of one item can take, measured exactly whatever the decimals of needs and packs.
 *
 * <p>What has been bought so far and will be used is the <em>effective supply</em>. A purchase in a period raises it by
 * the quantity bought, but never above that period's <em>cap</em>: the need up to the last period in which the purchase
 * may be used (and what may be credited as leftover after that). So the effective supply is always one of a few
 * <em>bases</em> (nothing, or a cap) and a whole number of <em>units</em> on top. The unit is the greatest common
 * divisor of all steps in which the item can be bought. The number of units between a base and a need or a cap is
 * rounded up once, in decimals; after that everything is whole numbers.
 */
final class SupplyGrid {
    final int periods;
    final int bases;
    /** The unit as a decimal, in the item's base unit. */
    final BigDecimal unit;
    /** By period and base: units on top of the base that reach the period's cap; zero if the base reaches it. */
    final long[][] toCap;
    /** By period and base: units on top of the base that cover the needs up to and with the period. */
    final long[][] toNeed;
    /** By period: the base that is the period's cap. */
    final int[] capBase;
    /** By base: the most units on top that make a difference. */
    final long[] width;

    private final BigDecimal[] covered;
    private final BigDecimal[] cap;
    private final List<BigDecimal> baseSupply;
    private final Need need;

    SupplyGrid(Need need, List<BigDecimal> steps) {
        this.need = need;
        periods = need.perPeriod().size();
        unit = steps.stream().reduce(SupplyGrid::commonDivisor).orElse(BigDecimal.ONE);
        covered = running(Outlasting.netOfOther(need));
        cap = caps();
        TreeSet<BigDecimal> distinct = new TreeSet<>(List.of(cap));
        distinct.add(BigDecimal.ZERO);
        baseSupply = new ArrayList<>(distinct);
        bases = baseSupply.size();
        toCap = new long[periods][bases];
        toNeed = new long[periods][bases];
        capBase = new int[periods];
        width = new long[bases];
        for (int t = 0; t < periods; t++) {
            BigDecimal capHere = cap[t];
            capBase[t] = (int) baseSupply.stream()
                    .filter(base -> base.compareTo(capHere) < 0)
                    .count();
            for (int k = 0; k < bases; k++) {
                toCap[t][k] = units(cap[t].subtract(baseSupply.get(k)));
                toNeed[t][k] = units(covered[t].subtract(baseSupply.get(k)));
                width[k] = Math.max(width[k], Math.max(1, toCap[t][k]));
            }
        }
    }

    private static BigDecimal[] running(List<BigDecimal> perPeriod) {
        BigDecimal[] sums = new BigDecimal[perPeriod.size()];
        BigDecimal sum = BigDecimal.ZERO;
        for (int t = 0; t < sums.length; t++) {
            sum = sum.add(perPeriod.get(t));
            sums[t] = sum;
        }
        return sums;
    }

    private BigDecimal[] caps() {
        BigDecimal[] caps = new BigDecimal[periods];
        for (int t = 0; t < periods; t++) {
            boolean outlastsHorizon = need.usablePeriods() > periods - t;
            caps[t] = outlastsHorizon ? credited() : covered[Math.min(periods, t + need.usablePeriods()) - 1];
        }
        return caps;
    }

    private BigDecimal credited() {
        BigDecimal all = covered[periods - 1];
        return need.creditPerUnit().signum() > 0 ? all.add(need.creditable()) : all;
    }

    /** The greatest quantity that two quantities are whole multiples of. */
    private static BigDecimal commonDivisor(BigDecimal a, BigDecimal b) {
        int scale = Math.max(Math.max(a.scale(), b.scale()), 0);
        BigInteger divisor =
                a.setScale(scale).unscaledValue().gcd(b.setScale(scale).unscaledValue());
        return new BigDecimal(divisor, scale);
    }

    private long units(BigDecimal quantity) {
        return quantity.signum() <= 0
                ? 0
                : quantity.divide(unit, 0, RoundingMode.CEILING).longValueExact();
    }

    /** Whether one position is further on than another: above zero if the first is. */
    int compare(int baseA, long unitsA, int baseB, long unitsB) {
        if (baseA == baseB) {
            return Long.compare(unitsA, unitsB);
        }
        if (baseA < baseB) {
            return -compare(baseB, unitsB, baseA, unitsA);
        }
        BigDecimal between = baseSupply.get(baseA).subtract(baseSupply.get(baseB));
        BigDecimal whole = between.divideToIntegralValue(unit);
        long lead = unitsB - unitsA;
        if (lead != whole.longValueExact()) {
            return lead < whole.longValueExact() ? 1 : -1;
        }
        return whole.multiply(unit).compareTo(between) == 0 ? 0 : 1;
    }

    /** How many units a step is. */
    long unitsOf(BigDecimal step) {
        return step.divideToIntegralValue(unit).longValueExact();
    }

    /** The most that a purchase in a period can add to the effective supply, in steps rounded up. */
    long usefulSteps(int period, BigDecimal step) {
        BigDecimal before = period == 0 ? BigDecimal.ZERO : covered[period - 1];
        BigDecimal most = cap[period].subtract(before);
        return most.signum() <= 0
                ? 0
                : most.divide(step, 0, RoundingMode.CEILING).longValueExact();
    }

    /** Whether a purchase in a period can cover a need or earn a credit. */
    boolean canCover(int period) {
        return cap[period].compareTo(period == 0 ? BigDecimal.ZERO : covered[period - 1]) > 0;
    }

    /** Whether anything is needed in a period that stock does not cover. */
    boolean needs(int period) {
        return covered[period].compareTo(period == 0 ? BigDecimal.ZERO : covered[period - 1]) > 0;
    }

    /** The need of all periods that stock does not cover, in the base unit. */
    BigDecimal netNeed() {
        return covered[periods - 1];
    }

    /** The supply that a period and those before it need. */
    BigDecimal covered(int period) {
        return covered[period];
    }

    /** The most that purchases up to and with a period can supply. */
    BigDecimal cap(int period) {
        return cap[period];
    }

    /** The value of leftovers, in home currency, if the supply ends on a base and some units. */
    double credit(int base, long units) {
        return earnsCredit()
                ? credit(baseSupply.get(base).subtract(netNeed()).doubleValue() + units * unit.doubleValue())
                : 0;
    }

    /** The value of leftovers, in home currency, if the supply ends at this quantity. */
    double credit(BigDecimal supply) {
        return earnsCredit() ? credit(supply.subtract(netNeed()).doubleValue()) : 0;
    }

    /** The highest value that leftovers can have. */
    double mostCredit() {
        return need.creditPerUnit().multiply(need.creditable()).doubleValue();
    }

    private boolean earnsCredit() {
        return need.creditPerUnit().signum() > 0;
    }

    private double credit(double left) {
        double counted = Math.max(0, Math.min(need.creditable().doubleValue(), left));
        return need.creditPerUnit().doubleValue() * counted;
    }
}
