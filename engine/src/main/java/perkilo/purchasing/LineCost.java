package perkilo.purchasing;

import java.math.BigDecimal;

/**
 * What one line of an order costs. Amounts are in home currency unless the name says otherwise.
 *
 * @param line quote, period and packs
 * @param tier index of the price break that holds
 * @param quantity in the item's base unit
 * @param kg what it weighs for freight
 * @param goodsQuoted what is invoiced for the goods, in the quote's currency, rounded to its minor unit
 * @param goodsInvoiced the same in the vendor's currency
 * @param goods the same in home currency at the dated rate, without the bank's margin
 * @param landed everything: goods, margin, insurance, freight, duty, and this line's share of the order's charges
 */
public record LineCost(
        PurchasePlan.Line line,
        int tier,
        BigDecimal quantity,
        BigDecimal kg,
        BigDecimal goodsQuoted,
        BigDecimal goodsInvoiced,
        BigDecimal goods,
        BigDecimal landed) {

    /** What came on top of the goods. */
    public BigDecimal inbound() {
        return landed.subtract(goods);
    }
}
