package perkilo.costing;

import static java.math.BigDecimal.ONE;

import java.math.BigDecimal;
import java.math.MathContext;
import org.jspecify.annotations.Nullable;
import perkilo.model.Product;
import perkilo.origin.Figure;

/**
 * The price at which one unit must sell, and the margin that a given retail price leaves. Amounts are in home currency.
 *
 * @param unitCost C
 * @param upwards from the cost to the retail price, by the margins; null if no target margin is given
 * @param downwards from the target retail price to the margin that is left; null if no target price is given
 * @param sale at the price that the person named: the target retail price, or else the target margin
 * @param ladderSale at the price that follows from the target margin, beside a target retail price; null if only one of
 *     the two is given
 */
public record PriceLadder(
        BigDecimal unitCost,
        @Nullable Upwards upwards,
        @Nullable Downwards downwards,
        Sale sale,
        @Nullable Sale ladderSale) {

    /**
     * What a wholesale price brings.
     *
     * @param profitPerUnit {@code wholesale − C}; below zero for a loss
     * @param breakEvenUnits units that pay for the one-off costs; null if a unit earns no more than it costs
     */
    public record Sale(BigDecimal profitPerUnit, @Nullable BigDecimal breakEvenUnits) {}

    /**
     * From the cost to the retail price.
     *
     * @param wholesale {@code C / (1 − margin)}
     * @param distributorPrice {@code wholesale / (1 − distributor margin)}: what the retailer pays
     * @param retailExVat {@code distributorPrice / (1 − retailer margin)}
     * @param retail {@code retailExVat × (1 + VAT)}
     */
    public record Upwards(
            BigDecimal wholesale, BigDecimal distributorPrice, BigDecimal retailExVat, BigDecimal retail) {}

    /**
     * From the target retail price to the margin.
     *
     * @param retailExVat {@code retail / (1 + VAT)}
     * @param distributorPrice {@code retailExVat × (1 − retailer margin)}: what the retailer pays
     * @param wholesale {@code distributorPrice × (1 − distributor margin)}
     * @param margin the rest of the wholesale price, as a fraction of that price; below zero if the price does not
     *     cover the cost; null if the target price is zero
     */
    public record Downwards(
            BigDecimal retailExVat,
            BigDecimal distributorPrice,
            BigDecimal wholesale,
            @Nullable BigDecimal margin) {}

    /**
     * The ladder of a product.
     *
     * @param unitCost C, with its share of the one-off costs
     * @param oneOffShare the one-off costs in it
     * @return null if neither a target margin nor a target retail price is given
     */
    public static @Nullable PriceLadder of(Product product, BigDecimal unitCost, BigDecimal oneOffShare) {
        Upwards upwards = upwards(product, unitCost);
        Downwards downwards = downwards(product, unitCost);
        Sale atMargin = upwards == null ? null : sale(product, upwards.wholesale(), unitCost, oneOffShare);
        Sale atTarget = downwards == null ? null : sale(product, downwards.wholesale(), unitCost, oneOffShare);
        Sale named = atTarget == null ? atMargin : atTarget;
        return named == null
                ? null
                : new PriceLadder(unitCost, upwards, downwards, named, atTarget == null ? null : atMargin);
    }

    private static Sale sale(Product product, BigDecimal wholesale, BigDecimal unitCost, BigDecimal oneOffShare) {
        BigDecimal profit = wholesale.subtract(unitCost);
        BigDecimal earned = profit.add(oneOffShare);
        return new Sale(
                profit,
                earned.signum() > 0 ? product.oneOffCosts().value().divide(earned, MathContext.DECIMAL128) : null);
    }

    /** {@link Sale#breakEvenUnits} at the price that the person named. */
    public @Nullable BigDecimal breakEvenUnits() {
        return sale.breakEvenUnits();
    }

    private static @Nullable Upwards upwards(Product product, BigDecimal unitCost) {
        Figure margin = product.targetMargin();
        if (margin == null) {
            return null;
        }
        BigDecimal wholesale = unitCost.divide(ONE.subtract(margin.value()), MathContext.DECIMAL128);
        Figure distributor = product.distributorMargin();
        BigDecimal distributorPrice = distributor.isZero()
                ? wholesale
                : wholesale.divide(ONE.subtract(distributor.value()), MathContext.DECIMAL128);
        BigDecimal retailExVat =
                distributorPrice.divide(ONE.subtract(product.retailerMargin().value()), MathContext.DECIMAL128);
        return new Upwards(
                wholesale,
                distributorPrice,
                retailExVat,
                retailExVat.multiply(ONE.add(product.vat().value())));
    }

    private static @Nullable Downwards downwards(Product product, BigDecimal unitCost) {
        Figure retail = product.targetRetailPrice();
        if (retail == null) {
            return null;
        }
        BigDecimal exVat = retail.value().divide(ONE.add(product.vat().value()), MathContext.DECIMAL128);
        BigDecimal distributorPrice =
                exVat.multiply(ONE.subtract(product.retailerMargin().value()));
        BigDecimal wholesale = distributorPrice.multiply(
                ONE.subtract(product.distributorMargin().value()));
        BigDecimal margin =
                wholesale.signum() == 0 ? null : wholesale.subtract(unitCost).divide(wholesale, MathContext.DECIMAL128);
        return new Downwards(exVat, distributorPrice, wholesale, margin);
    }
}
