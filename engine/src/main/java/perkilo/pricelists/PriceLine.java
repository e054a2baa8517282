package perkilo.pricelists;

import java.math.BigDecimal;
import java.math.MathContext;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Origin;

/**
 * A price of a list, as a person reviews it.
 *
 * @param key tells it apart on a review
 * @param where its cell
 * @param theirs the item as the list calls it
 * @param ours the item that it means
 * @param how how that was found
 * @param pack such as {@code 25 kg}
 * @param from the quantity that it begins at, in the pack's unit; empty for the first pack
 * @param price null if the list names the pack without a price
 * @param per what the price is for
 * @param currency its code; empty without a price
 * @param quotedOn its day; empty if that is not known yet
 * @param validUntil its last day; empty if that is not known
 * @param before the price of the list before, for the same amount; null if there is none to compare with
 */
public record PriceLine(
        String key,
        Origin where,
        String theirs,
        String ours,
        String how,
        String pack,
        String from,
        @Nullable BigDecimal price,
        String per,
        String currency,
        String quotedOn,
        String validUntil,
        @Nullable BigDecimal before) {

    /** The change since the list before, as a fraction; null if there is nothing to compare. */
    public @Nullable BigDecimal change() {
        return price == null || before == null || before.signum() == 0
                ? null
                : price.subtract(before).divide(before, MathContext.DECIMAL64);
    }
}
