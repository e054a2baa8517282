package perkilo.orderplan;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Origin;

/**
 * A need that no plan can meet, or that is not known.
 *
 * @param item the item's name, or the product's if nothing of its needs is known
 * @param neededBy the day on which it is needed; null if it is not known
 * @param quantity what is not covered, in {@code unit}; null if it is not known
 * @param unit kilograms, pieces, or units of a product
 * @param why the reason, in a few words
 * @param origin the cell to look at
 */
public record NotCovered(
        String item,
        @Nullable LocalDate neededBy,
        @Nullable BigDecimal quantity,
        String unit,
        String why,
        Origin origin) {}
