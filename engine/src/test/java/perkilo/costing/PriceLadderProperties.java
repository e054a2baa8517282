package perkilo.costing;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;
import perkilo.Ratio;
import perkilo.units.Measure;

/** What holds of any price ladder. */
final class PriceLadderProperties {

    @Property(tries = 500)
    void backwards_from_the_forward_price_returns_the_margin(
            @ForAll @BigRange(min = "0.01", max = "500") @Scale(4) BigDecimal cost,
            @ForAll @BigRange(min = "0", max = "0.95") @Scale(4) BigDecimal margin,
            @ForAll @BigRange(min = "0", max = "0.6") @Scale(4) BigDecimal distributor,
            @ForAll @BigRange(min = "0", max = "0.8") @Scale(4) BigDecimal retailer,
            @ForAll @BigRange(min = "0", max = "0.27") @Scale(3) BigDecimal vat) {
        Draft.ProductDraft forwards = product(distributor, retailer, vat);
        forwards.targetMargin = margin.toPlainString();
        PriceLadder.Upwards up =
                requireNonNull(requireNonNull(PriceLadder.of(forwards.product(), cost, BigDecimal.ZERO))
                        .upwards());

        Draft.ProductDraft backwards = product(distributor, retailer, vat);
        backwards.targetRetail = up.retail().toPlainString();
        PriceLadder.Downwards down =
                requireNonNull(requireNonNull(PriceLadder.of(backwards.product(), cost, BigDecimal.ZERO))
                        .downwards());

        Ratio.of(margin).assertIs(requireNonNull(down.margin()), "margin");
        Ratio.of(up.distributorPrice()).assertIs(down.distributorPrice(), "distributor's price");
        Ratio.of(up.wholesale()).assertIs(down.wholesale(), "wholesale");
        Ratio.of(up.retailExVat()).assertIs(down.retailExVat(), "retail without VAT");
    }

    private static Draft.ProductDraft product(BigDecimal distributor, BigDecimal retailer, BigDecimal vat) {
        Draft.ProductDraft product = new Draft.ProductDraft("Jar", "Gel", "50", Measure.G);
        product.distributorMargin = distributor.toPlainString();
        product.retailerMargin = retailer.toPlainString();
        product.vat = vat.toPlainString();
        return product;
    }
}
