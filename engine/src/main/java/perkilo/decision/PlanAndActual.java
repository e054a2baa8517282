package perkilo.decision;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.origin.Origin;

/**
 * A run as it was planned, held against what it really took.
 *
 * @param name its number or name; empty if there is none
 * @param variance why a unit cost more or less than planned
 * @param made units that came out
 * @param items by item: first those of the plan, in its order
 */
public record PlanAndActual(String name, Variance variance, BigDecimal made, List<OfItem> items) {

    public PlanAndActual {
        items = List.copyOf(items);
    }

    /**
     * An item by standard costing, for the whole run. Amounts are in home currency, quantities in kilograms or pieces.
     *
     * @param item its name
     * @param unit {@code kg} or {@code each}
     * @param standard the quantity that the plan allows for the units made; zero for an item that is not in the plan
     * @param actual the quantity used; the standard one where nothing was written down
     * @param standardPrice the planned landed cost of one; null for an item that is not in the plan
     * @param paid for the actual quantity, at the plan's exchange rates; at the planned price where nothing was written
     *     down
     * @param exchange what is paid more because exchange rates were others
     * @param uses what was written down
     * @param origin the first cell of what was written down; none if there is nothing
     */
    public record OfItem(
            String item,
            String unit,
            BigDecimal standard,
            BigDecimal actual,
            @Nullable BigDecimal standardPrice,
            BigDecimal paid,
            BigDecimal exchange,
            List<Used> uses,
            Origin origin) {

        public OfItem {
            uses = List.copyOf(uses);
        }

        /** Quantity variance: (actual quantity − standard quantity) × standard price; null without a standard price. */
        public @Nullable BigDecimal quantityVariance() {
            return standardPrice == null ? null : actual.subtract(standard).multiply(standardPrice);
        }

        /**
         * Price variance: (actual price − standard price) × actual quantity, at the plan's exchange rates; null without
         * a standard price.
         */
        public @Nullable BigDecimal priceVariance() {
            return standardPrice == null ? null : paid.subtract(actual.multiply(standardPrice));
        }
    }

    /**
     * One row of what was used.
     *
     * @param quantity as typed
     * @param perUnit kilograms or pieces for one unit of the quantity
     * @param paid as typed; null if not said
     * @param toHome home currency for one unit of the amount's currency, at the plan's rate
     * @param toHomeThen the same at the rate of the day of payment
     */
    public record Used(
            Figure quantity, BigDecimal perUnit, @Nullable Figure paid, BigDecimal toHome, BigDecimal toHomeThen) {}
}
