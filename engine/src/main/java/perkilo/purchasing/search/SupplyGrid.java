package perkilo.purchasing.search;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import perkilo.purchasing.Need;

/**
 * The positions that the supply of one item can take, measured exactly whatever the decimals of needs and packs.
 *
 * <p>What has been bought so far and will be used is the <em>effective supply</em>. A purchase raises it by the
 * quantity bought, but never above its <em>cap</em>: the need up to the last period in which the purchase may be used
 * (and what may be credited as leftover after that). Purchases are gone through in the order in which they expire. So
 * the effective supply is always one of a few <em>bases</em> (nothing, or a cap) and a whole number of <em>units</em>
 * on top. The unit is the greatest common divisor of all steps in which the item can be bought. The number of units
 * between a base and a need or a cap is rounded up once, in decimals; after that everything is whole numbers.
 */
final class SupplyGrid {
    final int periods;
    final int bases;
    /** The unit as a decimal, in the item's base unit. */
    final BigDecimal unit;
    /** By cap and base: units on top of the base that reach the cap; zero if the base reaches it. */
    final long[][] toCap;
    /** By period and base: units on top of the base that cover the needs up to and with the period. */
    final long[][] toNeed;
    /** By cap: the base that it is. */
    final int[] capBase;
    /** By base: the most units on top that make a difference. */
    final long[] width;

    private final Outlasting outlasting;
    private final BigDecimal[] covered;
    private final BigDecimal net;
    /** By the last period of use; the last is for goods that can be used after all periods. */
    private final BigDecimal[] cap;

    private final List<BigDecimal> baseSupply;
    private final Need need;

    /**
     * The positions of an item.
     *
     * @param steps in which it can be bought
     * @param lasts the last periods of use of all purchases
     */
    SupplyGrid(Need need, List<BigDecimal> steps, SortedSet<Integer> lasts) {
        this.need = need;
        outlasting = new Outlasting(need, lasts);
        periods = need.perPeriod().size();
        unit = steps.stream().reduce(SupplyGrid::commonDivisor).orElse(BigDecimal.ONE);
        Requirement required = Requirement.of(outlasting.withoutLots());
        covered = required.supply().toArray(new BigDecimal[0]);
        net = required.net();
        cap = caps();
        TreeSet<BigDecimal> distinct = new TreeSet<>(List.of(BigDecimal.ZERO, cap[periods]));
        lasts.forEach(last -> distinct.add(cap[capOf(last)]));
        baseSupply = new ArrayList<>(distinct);
        bases = baseSupply.size();
        toCap = new long[periods + 1][bases];
        toNeed = new long[periods][bases];
        capBase = new int[periods + 1];
        width = new long[bases];
        Arrays.fill(width, 1);
        Set<Integer> caps = new TreeSet<>(Set.of(periods));
        lasts.forEach(last -> caps.add(capOf(last)));
        for (int c : caps) {
            BigDecimal capHere = cap[c];
            capBase[c] = (int) baseSupply.stream()
                    .filter(base -> base.compareTo(capHere) < 0)
                    .count();
            for (int k = 0; k < bases; k++) {
                toCap[c][k] = units(capHere.subtract(baseSupply.get(k)));
                width[k] = Math.max(width[k], toCap[c][k]);
            }
        }
        for (int t = 0; t < periods; t++) {
            for (int k = 0; k < bases; k++) {
                toNeed[t][k] = units(covered[t].subtract(baseSupply.get(k)));
            }
        }
    }

    /** The cap of purchases that can be used until a period; it may be after the last. */
    int capOf(int last) {
        return Math.min(periods, last);
    }

    private BigDecimal[] caps() {
        BigDecimal[] caps = Arrays.copyOf(covered, periods + 1);
        caps[periods] = credited();
        return caps;
    }

    private BigDecimal credited() {
        BigDecimal all = covered[periods - 1];
        return need.creditPerUnit().signum() > 0 ? all.max(net.add(need.creditable())) : all;
    }

    /** The lots that outlast a purchase. */
    Outlasting outlasting() {
        return outlasting;
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

    /** The most that a purchase for a period can add to the effective supply, in steps rounded up. */
    long usefulSteps(int period, int cap, BigDecimal step) {
        BigDecimal before = period == 0 ? BigDecimal.ZERO : covered[period - 1];
        BigDecimal most = need.safety().isNone() ? this.cap[cap].subtract(before) : mostWithSafety(period, cap);
        return most.signum() <= 0
                ? 0
                : most.divide(step, 0, RoundingMode.CEILING).longValueExact();
    }

    /** All that is needed until a purchase expires, and the safety stock or the credited leftover on top. */
    private BigDecimal mostWithSafety(int period, int cap) {
        BigDecimal most = need.safety().quantity();
        most = cap == periods && need.creditPerUnit().signum() > 0 ? most.max(need.creditable()) : most;
        for (int t = period; t <= Math.min(cap, periods - 1); t++) {
            most = most.add(need.perPeriod().get(t));
        }
        return most;
    }

    /** Whether a purchase for a period can cover a need or earn a credit. */
    boolean canCover(int period, int cap) {
        return this.cap[cap].compareTo(period == 0 ? BigDecimal.ZERO : covered[period - 1]) > 0;
    }

    /** Whether anything is needed in a period that stock does not cover. */
    boolean needs(int period) {
        return covered[period].compareTo(period == 0 ? BigDecimal.ZERO : covered[period - 1]) > 0;
    }

    /** The need of all periods that stock does not cover, with what safety stock takes, in the base unit. */
    BigDecimal netNeed() {
        return covered[periods - 1];
    }

    /** The supply that a period and those before it need. */
    BigDecimal covered(int period) {
        return covered[period];
    }

    /** The most that the supply is after a purchase with a cap. */
    BigDecimal cap(int of) {
        return cap[of];
    }

    /** The value of leftovers, in home currency, if the supply ends on a base and some units. */
    double credit(int base, long units) {
        return earnsCredit()
                ? credit(baseSupply.get(base).subtract(net).doubleValue() + units * unit.doubleValue())
                : 0;
    }

    /** The value of leftovers, in home currency, if the supply ends at this quantity. */
    double credit(BigDecimal supply) {
        return earnsCredit() ? credit(supply.subtract(net).doubleValue()) : 0;
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
