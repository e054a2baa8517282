package perkilo;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.stream.Stream;

/**
 * An exact fraction: the second way in which tests compute what the engine computes in decimals. Nothing is ever
 * rounded unless a method says so.
 *
 * @param over numerator
 * @param under denominator, above zero
 */
public record Ratio(BigInteger over, BigInteger under) implements Comparable<Ratio> {

    public static final Ratio ZERO = of(0);
    public static final Ratio ONE = of(1);

    /** What 34 significant digits leave to rounding when a few dozen figures are divided and added. */
    /** What is left when amounts of some thousands, each to 34 digits, are taken from each other. */
    private static final BigDecimal LAST_DIGITS = new BigDecimal("1e-28");

    public Ratio {
        BigInteger common = over.gcd(under).max(BigInteger.ONE);
        BigInteger sign = BigInteger.valueOf(under.signum());
        if (under.signum() == 0) {
            throw new ArithmeticException("divided by zero");
        }
        over = over.divide(common).multiply(sign);
        under = under.divide(common).multiply(sign);
    }

    public static Ratio of(long whole) {
        return new Ratio(BigInteger.valueOf(whole), BigInteger.ONE);
    }

    public static Ratio of(BigDecimal decimal) {
        return decimal.scale() > 0
                ? new Ratio(decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale()))
                : new Ratio(decimal.toBigIntegerExact(), BigInteger.ONE);
    }

    public static Ratio of(String decimal) {
        return of(new BigDecimal(decimal));
    }

    public static Ratio sum(Stream<Ratio> terms) {
        return terms.reduce(ZERO, Ratio::plus);
    }

    public Ratio plus(Ratio other) {
        return new Ratio(over.multiply(other.under).add(other.over.multiply(under)), under.multiply(other.under));
    }

    public Ratio minus(Ratio other) {
        return plus(new Ratio(other.over.negate(), other.under));
    }

    public Ratio times(Ratio other) {
        return new Ratio(over.multiply(other.over), under.multiply(other.under));
    }

    public Ratio by(Ratio other) {
        return new Ratio(over.multiply(other.under), under.multiply(other.over));
    }

    public Ratio max(Ratio other) {
        return compareTo(other) >= 0 ? this : other;
    }

    public Ratio min(Ratio other) {
        return compareTo(other) <= 0 ? this : other;
    }

    public boolean isZero() {
        return over.signum() == 0;
    }

    /** The greatest whole number that is not above this. */
    public long floor() {
        BigInteger[] parts = over.divideAndRemainder(under);
        return parts[0].subtract(parts[1].signum() < 0 ? BigInteger.ONE : BigInteger.ZERO)
                .longValueExact();
    }

    /** The smallest whole number that is not below this. */
    public long ceiling() {
        return -new Ratio(over.negate(), under).floor();
    }

    /** This to so many decimals, an exact half upwards; for amounts of zero or more. */
    public Ratio halfUp(int decimals) {
        Ratio shift = of(BigDecimal.TEN.pow(decimals));
        return of(times(shift).plus(of("0.5")).floor()).by(shift);
    }

    /** This to 50 significant digits, for a message. */
    public BigDecimal decimal() {
        return new BigDecimal(over).divide(new BigDecimal(under), new MathContext(50));
    }

    /** Fails unless a decimal is this, but for the last of its 34 digits. */
    public void assertIs(BigDecimal decimal, String what) {
        Ratio off = of(decimal).minus(this);
        Ratio size = of(LAST_DIGITS).times(max(ZERO.minus(this)).max(ONE));
        assertThat(off.max(ZERO.minus(off)))
                .as("%s should be %s, but was %s", what, decimal(), decimal)
                .isLessThanOrEqualTo(size);
    }

    @Override
    public int compareTo(Ratio other) {
        return over.multiply(other.under).compareTo(other.over.multiply(under));
    }

    @Override
    public String toString() {
        return decimal().toString();
    }
}
