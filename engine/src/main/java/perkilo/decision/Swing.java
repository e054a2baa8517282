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
 */
public record Swing(
        Factor factor,
        BigDecimal today,
        @Nullable BigDecimal moving,
        @Nullable BigDecimal down,
        @Nullable BigDecimal up,
        @Nullable BigDecimal downReplanned,
        @Nullable BigDecimal upReplanned) {

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
