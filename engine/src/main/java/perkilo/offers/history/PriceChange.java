package perkilo.offers.history;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import perkilo.offers.Offer;

/**
 * The change of one price of one pack.
 *
 * @param from the quantity at which it starts, in the pack's unit; zero for the first pack
 * @param before null if the pack was not quoted before
 * @param now null if the pack is no longer on the list
 */
public record PriceChange(
        BigDecimal from,
        @Nullable QuotedPrice before,
        @Nullable QuotedPrice now) {

    /** The kinds of changes. */
    public enum Kind {
        ROSE("rose"),
        FELL("fell"),
        SAME("the same"),
        NEW("new"),
        GONE("no longer on the list"),
        NOT_COMPARABLE("in another currency or unit");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The kind in words. */
        public String word() {
            return word;
        }
    }

    /** The kind of change. */
    public Kind kind() {
        if (before == null) {
            return Kind.NEW;
        }
        if (now == null) {
            return Kind.GONE;
        }
        boolean comparable = before.unit() == now.unit()
                && before.offer().currency().equals(now.offer().currency());
        if (!comparable) {
            return Kind.NOT_COMPARABLE;
        }
        int sign = now.perUnit().compareTo(before.perUnit());
        return sign > 0 ? Kind.ROSE : sign < 0 ? Kind.FELL : Kind.SAME;
    }

    /** The present quote, or the last one if the pack is gone. */
    public Offer offer() {
        QuotedPrice one = now == null ? before : now;
        if (one == null) {
            throw new IllegalStateException("neither before nor now");
        }
        return one.offer();
    }

    /** The change as a fraction of the earlier price: 0.1 for a tenth more; empty if the two cannot be compared. */
    public Optional<BigDecimal> fraction() {
        if (before == null
                || now == null
                || kind() == Kind.NOT_COMPARABLE
                || before.perUnit().signum() == 0) {
            return Optional.empty();
        }
        return Optional.of(now.perUnit().subtract(before.perUnit()).divide(before.perUnit(), MathContext.DECIMAL128));
    }
}
