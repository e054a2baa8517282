package perkilo.purchasing;

import static java.math.BigDecimal.ONE;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * The cost of some packs of one quote alone, without charges for the whole order. Amounts are in the vendor's currency
 * unless the name says otherwise.
 *
 * @param tier index of the price break that applies
 * @param quantity in the item's base unit
 * @param kg the weight for freight
 * @param goodsQuoted the invoiced value of the goods, in the quote's currency, rounded to its minor unit
 * @param goodsInvoiced the same in the vendor's currency
 * @param dutyRate of the line, as a fraction
 * @param duty on the line, without its share of the order's charges
 * @param landed goods, margin, insurance, freight by weight and duty
 * @param landedPerUnit of the item's base unit, exact; null if it is not a short decimal
 */
public record OwnCost(
        int tier,
        BigDecimal quantity,
        BigDecimal kg,
        BigDecimal goodsQuoted,
        BigDecimal goodsInvoiced,
        BigDecimal dutyRate,
        BigDecimal duty,
        BigDecimal landed,
        @Nullable BigDecimal landedPerUnit) {

    /**
     * Costs packs of a quote, by the formulas in {@link PlanCost}.
     *
     * @param vendor who makes the quote
     * @throws IllegalArgumentException if the packs are below the quote's first price
     */
    public static OwnCost of(Quote quote, Vendor vendor, long packs) {
        int tier = quote.tierFor(packs);
        BigDecimal quoted = quote.goodsAt(tier, packs);
        BigDecimal invoiced = times(quoted, quote.toVendorCurrency());
        BigDecimal weight = quote.kgPerPack().multiply(BigDecimal.valueOf(packs));
        BigDecimal insured = times(invoiced, ONE.add(vendor.insurance()));
        BigDecimal freight = vendor.freightPerKg().multiply(weight);
        BigDecimal dutiable = vendor.dutyBasis() == DutyBasis.CIF ? insured.add(freight) : invoiced;
        BigDecimal duty = quote.duty().multiply(dutiable);
        BigDecimal landed =
                times(insured.add(freight), ONE.add(vendor.margin())).add(duty);
        BigDecimal quantity = quote.quantity(packs);
        return new OwnCost(
                tier, quantity, weight, quoted, invoiced, quote.duty(), duty, landed, Quotient.exact(landed, quantity));
    }

    /** The product; skips the arithmetic for a factor of one, the usual case. */
    static BigDecimal times(BigDecimal amount, BigDecimal factor) {
        return factor.compareTo(ONE) == 0 ? amount : amount.multiply(factor);
    }
}
