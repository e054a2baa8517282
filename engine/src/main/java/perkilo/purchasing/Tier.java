package perkilo.purchasing;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;

/**
 * One price break of a quote: the price of a whole line from a quantity upwards.
 *
 * @param from the smallest line, in the item's base unit, that gets this price; zero or more
 * @param pricePerPack for one pack, in the quote's currency; zero for a free sample
 */
public record Tier(BigDecimal from, BigDecimal pricePerPack) {

    public Tier {
        requireNonNull(from, "from");
        requireNonNull(pricePerPack, "pricePerPack");
        if (from.signum() < 0 || pricePerPack.signum() < 0) {
            throw new IllegalArgumentException(
                    "a price break starts at zero or more and costs zero or more, but was from %s at %s"
                            .formatted(from.toPlainString(), pricePerPack.toPlainString()));
        }
    }
}
