package perkilo.decision;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a factor does to the cost of one unit, or of one kilogram of bulk that is not filled. Amounts are in home
 * currency.
 *
 * @param factor what is moved
 * @param today the cost as it is
 * @param moving the part of the cost that moves with the factor in proportion while the purchase is kept; null if it
 *     does not move in proportion
 * @param down the cost with the factor moved down and the purchase kept; null if the purchase does not cover that
 * @param up the same with the factor moved up
 * @param downReplanned the cost with the factor moved down and the purchase planned anew; null if that was not asked
 *     for, or is not possible
 * @param upReplanned the same with the factor moved up
 * @param past how far the factor moved before, which {@code down} and {@code up} are for; null if it is moved by the
 *     same part as all others
 */
public record Swing(
        Factor factor,
        BigDecimal today,
        @Nullable BigDecimal moving,
        @Nullable BigDecimal down,
        @Nullable BigDecimal up,
        @Nullable BigDecimal downReplanned,
        @Nullable BigDecimal upReplanned,
        @Nullable Past past) {

    /**
     * What a factor did before.
     *
     * @param spread how far it moved within the days
     * @param days the length of the windows
     */
    public record Past(RiskBand.Spread spread, int days) {}

    /** A factor that is moved by the same part as all others. */
    Swing(
            Factor factor,
            BigDecimal today,
            @Nullable BigDecimal moving,
            @Nullable BigDecimal down,
            @Nullable BigDecimal up,
            @Nullable BigDecimal downReplanned,
            @Nullable BigDecimal upReplanned) {
        this(factor, today, moving, down, up, downReplanned, upReplanned, null);
    }

    /** The same factor, moved as it did before; null if that is not known. */
    public @Nullable Swing asBefore(RiskBand band) {
        RiskBand.Spread spread = band.moved().get(factor);
        BigDecimal part = moving;
        return spread == null || part == null
                ? null
                : new Swing(
                        factor,
                        today,
                        part,
                        today.add(part.multiply(spread.low())),
                        today.add(part.multiply(spread.high())),
                        null,
                        null,
                        new Past(spread, band.horizonDays()));
    }

    /** The distance from the lowest to the highest of all known costs, today's included. */
    public BigDecimal width() {
        BigDecimal lowest = today;
        BigDecimal highest = today;
        for (BigDecimal one : Stream.of(down, up, downReplanned, upReplanned)
                .filter(Objects::nonNull)
                .toList()) {
            lowest = lowest.min(one);
            highest = highest.max(one);
        }
        return highest.subtract(lowest);
    }

    /** Whether any cost is known but today's. */
    boolean saysAnything() {
        return down != null || up != null || downReplanned != null || upReplanned != null;
    }
}
