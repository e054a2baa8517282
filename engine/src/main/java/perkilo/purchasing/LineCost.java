package perkilo.purchasing;

import static perkilo.purchasing.OwnCost.times;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * The cost of one line of an order. Amounts are in home currency unless the name says otherwise.
 *
 * <p>They are kept in the vendor's currency, where they are short decimals, and converted on demand.
 *
 * @param line quote, period and packs
 * @param own the cost of the line alone, in the vendor's currency
 * @param share of the charges for the whole order, with margin and the line's duty on it, in the vendor's currency
 * @param toHome home currency for one unit of the vendor's
 */
public record LineCost(PurchasePlan.Line line, OwnCost own, BigDecimal share, BigDecimal toHome) {

    LineCost withShare(BigDecimal ofTheOrder) {
        return new LineCost(line, own, ofTheOrder, toHome);
    }

    /** Index of the price break that applies. */
    public int tier() {
        return own.tier();
    }

    /** In the item's base unit. */
    public BigDecimal quantity() {
        return own.quantity();
    }

    /** The weight for freight, in kilograms. */
    public BigDecimal kg() {
        return own.kg();
    }

    /** The invoiced value of the goods, in the quote's currency, rounded to its minor unit. */
    public BigDecimal goodsQuoted() {
        return own.goodsQuoted();
    }

    /** The same in the vendor's currency. */
    public BigDecimal goodsInvoiced() {
        return own.goodsInvoiced();
    }

    /** The same in home currency at the dated rate, without the bank's margin. */
    public BigDecimal goods() {
        return times(own.goodsInvoiced(), toHome);
    }

    /** Everything: goods, margin, insurance, freight, duty, and this line's share of the order's charges. */
    public BigDecimal landed() {
        return times(landedUnconverted(), toHome);
    }

    /** The same in the vendor's currency. */
    public BigDecimal landedUnconverted() {
        return share.signum() == 0 ? own.landed() : own.landed().add(share);
    }

    /** {@link #landedUnconverted} of the item's base unit, exact; null if it is not a short decimal. */
    public @Nullable BigDecimal landedPerUnit() {
        return share.signum() == 0 ? own.landedPerUnit() : null;
    }

    /** The costs on top of the goods. */
    public BigDecimal inbound() {
        return landed().subtract(goods());
    }
}
