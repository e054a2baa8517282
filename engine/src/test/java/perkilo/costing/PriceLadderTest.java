package perkilo.costing;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static perkilo.costing.Draft.d;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.units.Measure;

/** What a unit must sell for, and what is left of a price; textbook cases of margin and VAT. */
final class PriceLadderTest {

    /**
     * A margin is part of the price, not of the cost: cost 10 at a margin of 50 % sells for 20; price 100 with 20 % of
     * it kept means cost 80; a mark-up of 50 % on 10 (price 15) is a margin of a third; 40 % on 300 (price 420) one of
     * 2/7.
     */
    @ParameterizedTest(name = "cost {0}, margin {1}: {2}")
    @CsvSource({"10, 0.50, 20.00", "80, 0.20, 100.00", "10, 0.333333333333, 15.00", "300, 0.285714285714, 420.00"})
    void wholesale_price_from_cost_and_margin(BigDecimal cost, String margin, BigDecimal price) {
        PriceLadder ladder = ladder(cost, margin, "0", "0", null);

        assertThat(requireNonNull(ladder.upwards()).wholesale()).isCloseTo(price, within(d("1e-6")));
    }

    /** Shelf price 14.90 with 20 % VAT: 12.42 without, 2.48 VAT. */
    @Test
    void vat_is_taken_out_of_a_shelf_price() {
        BigDecimal net = requireNonNull(
                        ladder(d("1"), null, "0", "0.20", "14.90").downwards())
                .retailExVat()
                .setScale(2, RoundingMode.HALF_UP);

        assertThat(net).isEqualByComparingTo("12.42");
        assertThat(d("14.90").subtract(net)).isEqualByComparingTo("2.48");
    }

    /** 4 / (1 − 0.5) = 8; 8 / (1 − 0.6) = 20; 20 × 1.19 = 23.80; and all the way back. */
    @Test
    void up_the_ladder_and_down_again() {
        PriceLadder.Upwards up =
                requireNonNull(ladder(d("4"), "0.5", "0.6", "0.19", null).upwards());

        assertThat(up.wholesale()).isEqualByComparingTo("8");
        assertThat(up.retailExVat()).isEqualByComparingTo("20");
        assertThat(up.retail()).isEqualByComparingTo("23.8");

        PriceLadder.Downwards down =
                requireNonNull(ladder(d("4"), null, "0.6", "0.19", "23.80").downwards());
        assertThat(down.retailExVat()).isEqualByComparingTo("20");
        assertThat(down.wholesale()).isEqualByComparingTo("8");
        assertThat(down.margin()).isEqualByComparingTo("0.5");
    }

    /** 4 / (1 − 0.5) = 8; 8 / (1 − 0.2) = 10; 10 / (1 − 0.6) = 25; 25 × 1.2 = 30; and all the way back. */
    @Test
    void a_distributor_is_between_wholesale_and_retailer() {
        Draft.ProductDraft forwards = product("0.5", "0.6", "0.2", null);
        forwards.distributorMargin = "0.2";
        PriceLadder.Upwards up = requireNonNull(requireNonNull(PriceLadder.of(forwards.product(), d("4"), d("0")))
                .upwards());

        assertThat(up.wholesale()).isEqualByComparingTo("8");
        assertThat(up.distributorPrice()).isEqualByComparingTo("10");
        assertThat(up.retailExVat()).isEqualByComparingTo("25");
        assertThat(up.retail()).isEqualByComparingTo("30");

        Draft.ProductDraft backwards = product(null, "0.6", "0.2", "30");
        backwards.distributorMargin = "0.2";
        PriceLadder ladder = requireNonNull(PriceLadder.of(backwards.product(), d("4"), d("0")));
        PriceLadder.Downwards down = requireNonNull(ladder.downwards());

        assertThat(down.retailExVat()).isEqualByComparingTo("25");
        assertThat(down.distributorPrice()).isEqualByComparingTo("10");
        assertThat(down.wholesale()).isEqualByComparingTo("8");
        assertThat(down.margin()).isEqualByComparingTo("0.5");
        assertThat(ladder.sale().profitPerUnit()).isEqualByComparingTo("4");
    }

    /**
     * Retail 10 with 25 % VAT and 50 % for the retailer leaves 4 of wholesale: a unit that costs 5 loses a quarter of
     * it.
     */
    @Test
    void a_price_below_cost_leaves_a_negative_margin() {
        PriceLadder ladder = ladder(d("5"), null, "0.5", "0.25", "10");

        assertThat(requireNonNull(ladder.downwards()).margin()).isEqualByComparingTo("-0.25");
        assertThat(ladder.breakEvenUnits()).isNull();
    }

    /** A wholesale price of 8 against 3 without one-offs: 1,500 of one-offs are earned by 300 units. */
    @Test
    void break_even_pays_for_the_one_offs() {
        Draft.ProductDraft product = product("0.5", "0", "0", null);
        product.oneOffs = "1500";

        PriceLadder ladder = requireNonNull(PriceLadder.of(product.product(), d("4"), d("1")));

        assertThat(ladder.breakEvenUnits()).isEqualByComparingTo("300");
    }

    /** With both given: at 5 a unit earns 2, so 1,500 take 750; at the margin's price of 8 they take 300. */
    @Test
    void of_two_wholesale_prices_the_named_one_counts() {
        Draft.ProductDraft product = product("0.5", "0", "0", "5");
        product.oneOffs = "1500";

        PriceLadder ladder = requireNonNull(PriceLadder.of(product.product(), d("4"), d("1")));

        assertThat(requireNonNull(ladder.downwards()).wholesale()).isEqualByComparingTo("5");
        assertThat(ladder.breakEvenUnits()).isEqualByComparingTo("750");
        assertThat(ladder.sale().profitPerUnit()).isEqualByComparingTo("1");
        PriceLadder.Sale atMargin = requireNonNull(ladder.ladderSale());
        assertThat(atMargin.breakEvenUnits()).isEqualByComparingTo("300");
        assertThat(atMargin.profitPerUnit()).isEqualByComparingTo("4");
    }

    @Test
    void with_one_wholesale_price_there_is_one_break_even() {
        assertThat(requireNonNull(ladder(d("4"), "0.5", "0", "0", null)).ladderSale())
                .isNull();
        assertThat(requireNonNull(ladder(d("4"), null, "0", "0", "5")).ladderSale())
                .isNull();
    }

    @Test
    void without_margin_and_price_there_is_no_ladder() {
        assertThat(PriceLadder.of(product(null, "0.5", "0.2", null).product(), d("4"), d("1")))
                .isNull();
    }

    @Test
    void a_target_price_of_zero_has_no_margin() {
        assertThat(requireNonNull(ladder(d("5"), null, "0.5", "0.25", "0").downwards())
                        .margin())
                .isNull();
    }

    private static PriceLadder ladder(
            BigDecimal cost, @Nullable String margin, String retailer, String vat, @Nullable String retail) {
        return requireNonNull(
                PriceLadder.of(product(margin, retailer, vat, retail).product(), cost, BigDecimal.ZERO));
    }

    private static Draft.ProductDraft product(
            @Nullable String margin, String retailer, String vat, @Nullable String retail) {
        Draft.ProductDraft product = new Draft.ProductDraft("Jar", "Gel", "50", Measure.G);
        product.targetMargin = margin;
        product.retailerMargin = retailer;
        product.vat = vat;
        product.targetRetail = retail;
        return product;
    }
}
