package perkilo.costing;

import java.math.BigDecimal;
import java.math.MathContext;
import org.jspecify.annotations.Nullable;
import perkilo.model.Product;
import perkilo.origin.Figure;

/**
 * The part of a leftover that can be used before it expires.
 *
 * <p>{@code min( leftover , max( 0 , yearly need × shelf life / 12 − need of this run ) )} with {@code yearly need =
 * need of this run × yearly units / U}; the whole leftover if the yearly units or the shelf life are unknown.
 */
final class UsableLeftover {

    private static final BigDecimal MONTHS_A_YEAR = BigDecimal.valueOf(12);

    private UsableLeftover() {}

    /** The most that can be used of a leftover, in kilograms or pieces; null for no limit. */
    static @Nullable BigDecimal limit(RunNeeds needs, Item item) {
        Figure shelfLife = shelfLife(item);
        Product product = needs.product();
        Figure yearly = product == null ? null : product.yearlyUnits();
        BigDecimal units = needs.units();
        if (shelfLife == null || yearly == null || units == null) {
            return null;
        }
        BigDecimal perYear = item.needed().multiply(yearly.value());
        BigDecimal withinShelfLife =
                perYear.multiply(shelfLife.value()).divide(units.multiply(MONTHS_A_YEAR), MathContext.DECIMAL128);
        return withinShelfLife.subtract(item.needed()).max(BigDecimal.ZERO);
    }

    private static @Nullable Figure shelfLife(Item item) {
        return item.material() == null ? null : item.material().shelfLifeMonths();
    }
}
