package perkilo.purchasing;

import static org.assertj.core.api.Assertions.assertThat;
import static perkilo.purchasing.Problems.d;
import static perkilo.purchasing.Problems.plainVendor;
import static perkilo.purchasing.Problems.quote;
import static perkilo.purchasing.Problems.tier;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Landed cost on examples that are published, or that can be worked out by hand. */
final class LandedCostTest {

    /**
     * 2,000 umbrellas at GBP 5 with freight and insurance of GBP 500 and 4 % duty: customs value 10,500, duty 420,
     * together 10,920 before VAT. A carrier's public guide to import duty in the United Kingdom.
     */
    @Test
    void two_thousand_umbrellas() {
        OrderCost order = umbrellas(DutyBasis.CIF);

        assertThat(order.goods()).isEqualByComparingTo("10000");
        assertThat(order.freight()).isEqualByComparingTo("500");
        assertThat(order.duty()).isEqualByComparingTo("420");
        assertThat(order.landed()).isEqualByComparingTo("10920");
        assertThat(order.lines().get(0).landed().divide(d("2000"))).isEqualByComparingTo("5.46");
    }

    /** Half of the umbrellas at 4 %, half at 10 %: each half pays its rate on 5,000 and on 250 of the freight. */
    @ParameterizedTest
    @CsvSource({"CIF, 735, 5460, 5775", "FOB, 700, 5450, 5750"})
    void each_line_pays_its_own_duty_on_its_share_of_the_freight(
            DutyBasis basis, BigDecimal duty, BigDecimal first, BigDecimal second) {
        Vendor vendor = new Vendor("umbrellas", BigDecimal.ONE, d("0"), d("500"), d("0"), d("0"), d("0"), null, basis);
        List<Quote> quotes = List.of(umbrella(0, "0.04"), umbrella(1, "0.1"));
        PurchaseProblem problem = PurchaseProblem.once(
                List.of(Need.once("black", d("1000")), Need.once("red", d("1000"))), List.of(vendor), quotes);

        OrderCost order = PlanCost.of(problem, new PurchasePlan(List.of(line(0, 1000), line(1, 1000))))
                .orders()
                .get(0);

        assertThat(order.duty()).isEqualByComparingTo(duty);
        assertThat(order.lines().get(0).landed()).isEqualByComparingTo(first);
        assertThat(order.lines().get(1).landed()).isEqualByComparingTo(second);
        assertThat(order.landed()).isEqualByComparingTo(first.add(second));
    }

    private static Quote umbrella(int item, String duty) {
        return new Quote(item, 0, d("1"), d("0"), 1, d("0"), List.of(tier("0", "5")), d(duty), BigDecimal.ONE, 2, 0, 0);
    }

    /** Where freight is no part of the customs value, duty is 4 % of 10,000. */
    @Test
    void two_thousand_umbrellas_where_duty_is_on_the_goods_alone() {
        OrderCost order = umbrellas(DutyBasis.FOB);

        assertThat(order.duty()).isEqualByComparingTo("400");
        assertThat(order.landed()).isEqualByComparingTo("10900");
    }

    /**
     * All at once, by hand: goods 3 × 33.335 = 100.005, invoiced 100.01; below 150, so 25 on top; insurance 1 % =
     * 1.0001; freight 40 + 0.5 × 30 = 55; duty 5 % of (100.01 × 1.01 + 15 + 40 + 25) = 9.050505; margin 2 %; rate 0.9.
     * ((100.01 + 25 + 1.0001 + 55) × 1.02 + 9.050505) × 0.9 = (184.630302 + 9.050505) × 0.9.
     */
    @Test
    void one_order_with_every_charge() {
        Vendor vendor = new Vendor(
                "all charges", d("0.9"), d("0.02"), d("40"), d("0.5"), d("0.01"), d("150"), d("25"), DutyBasis.CIF);
        Quote quote = new Quote(
                0, 0, d("10"), d("10"), 1, d("0"), List.of(tier("0", "33.335")), d("0.05"), BigDecimal.ONE, 2, 0, 0);

        OrderCost order = cost(vendor, quote, 3).orders().get(0);

        assertThat(order.goods()).isEqualByComparingTo("100.01");
        assertThat(order.smallOrderCharge()).isEqualByComparingTo("25");
        assertThat(order.insurance()).isEqualByComparingTo("1.0001");
        assertThat(order.freight()).isEqualByComparingTo("55");
        assertThat(order.duty()).isEqualByComparingTo("9.050505");
        assertThat(order.charges()).isEqualByComparingTo("81.0001");
        assertThat(order.landed()).isEqualByComparingTo("174.3127263");
    }

    @ParameterizedTest
    @EnumSource(DutyBasis.class)
    void opening_an_order_and_ordering_too_little_cost_what_the_vendor_says(DutyBasis basis) {
        Vendor vendor =
                new Vendor("all charges", d("0.9"), d("0.02"), d("40"), d("0"), d("0"), d("150"), d("25"), basis);
        Quote free =
                new Quote(0, 0, d("1"), d("1"), 1, d("0"), List.of(tier("0", "0")), d("0.1"), BigDecimal.ONE, 2, 0, 0);

        BigDecimal landed = cost(vendor, free, 1).outlay();

        // 40 × 1.02 × 0.9, with CIF + 40 × 0.1 × 0.9; 25 × (1.02 + 0.1) × 0.9
        assertThat(vendor.openingCost(d("0.1"))).isEqualByComparingTo(basis == DutyBasis.CIF ? "40.32" : "36.72");
        assertThat(vendor.smallOrderCost(d("0.1"))).isEqualByComparingTo("25.2");
        assertThat(landed).isEqualByComparingTo(vendor.openingCost(d("0.1")).add(vendor.smallOrderCost(d("0.1"))));
    }

    /** An order is small where its goods are below the minimum, and not where they just reach it. */
    @ParameterizedTest(name = "{0} packs at 50: charge {1}")
    @CsvSource({"1, 25", "2, 25", "3, 0", "4, 0"})
    void the_small_order_charge_ends_at_the_minimum(long packs, BigDecimal charge) {
        Vendor vendor = Problems.vendor("small", "150", "25");

        assertThat(cost(vendor, quote("1", tier("0", "50")), packs)
                        .orders()
                        .get(0)
                        .smallOrderCharge())
                .isEqualByComparingTo(charge);
    }

    /** Need 26.25 kg, packs of 10 kg, minimum order 25 kg: 3 packs, 30 kg, 3.75 kg left over. */
    @Test
    void packs_cover_the_need_and_the_minimum() {
        Quote quote = quote("10", 1, "25", tier("0", "100"));

        long packs = quote.packsFor(d("26.25").max(quote.smallestLine()));

        assertThat(packs).isEqualTo(3);
        assertThat(quote.quantity(packs)).isEqualByComparingTo("30");
        assertThat(Shelf.of(Need.once("oil", d("26.25")), List.of(quote.quantity(packs)))
                        .leftFromPurchases())
                .isEqualByComparingTo("3.75");
    }

    @ParameterizedTest(name = "{0} kg in multiples of {1} packs of {2} kg: {3} packs")
    @CsvSource({"0, 1, 10, 1", "10, 1, 10, 1", "10.001, 1, 10, 2", "10, 4, 10, 4", "40.001, 4, 10, 8", "0.3, 1, 0.1, 3"
    })
    void packs_are_whole_multiples(BigDecimal quantity, int multiple, String pack, long packs) {
        assertThat(quote(pack, multiple, "0", tier("0", "1")).packsFor(quantity))
                .isEqualTo(packs);
    }

    /**
     * The price of the highest break holds for the whole line. Prices and breaks: toy race cars (Heizer and Render,
     * Operations Management), hospital cleaner and toggle switches (Stevenson, Operations Management), vitamin bottles
     * (Chopra and Meindl, Supply Chain Management). The goods are price × quantity, first and last unit of each break.
     */
    @ParameterizedTest(name = "{3} at {0} / {1} / {2}: {4}")
    @CsvSource({
        "0:5.00, 1000:4.80, 2000:4.75, 999, 4995.00",
        "0:5.00, 1000:4.80, 2000:4.75, 1000, 4800.00",
        "0:5.00, 1000:4.80, 2000:4.75, 1999, 9595.20",
        "0:5.00, 1000:4.80, 2000:4.75, 2000, 9500.00",
        "50:18, 80:17, 100:16, 70, 1260.00",
        "50:18, 80:17, 100:16, 79, 1422.00",
        "50:18, 80:17, 100:16, 80, 1360.00",
        "50:18, 80:17, 100:16, 100, 1600.00",
        "0:0.90, 500:0.85, 1000:0.80, 499, 449.10",
        "0:0.90, 500:0.85, 1000:0.80, 840, 714.00",
        "0:0.90, 500:0.85, 1000:0.80, 1000, 800.00",
        "0:3.00, 5000:2.96, 10000:2.92, 4999, 14997.00",
        "0:3.00, 5000:2.96, 10000:2.92, 6367, 18846.32",
        "0:3.00, 5000:2.96, 10000:2.92, 10000, 29200.00"
    })
    void all_units_discounts(String first, String second, String third, long units, BigDecimal goods) {
        Quote quote = quote("1", priced(first), priced(second), priced(third));

        assertThat(quote.goods(units)).isEqualByComparingTo(goods);
        assertThat(cost(plainVendor("one"), quote, units).outlay()).isEqualByComparingTo(goods);
    }

    /**
     * Yearly cost of ordering in lots, {@code D/Q × S + Q/2 × H + D × price}, with the goods priced by the engine: 816
     * units a year, 12 for an order, 4 to hold one. Stevenson, Operations Management, gives 14,154 at 80 and 13,354 at
     * 100.
     */
    @ParameterizedTest(name = "lots of {0}: {1}")
    @CsvSource({"80, 14154.40", "100, 13353.92"})
    void yearly_cost_of_the_hospital_cleaner(long lot, BigDecimal yearly) {
        Quote quote = quote("1", tier("1", "20"), tier("50", "18"), tier("80", "17"), tier("100", "16"));

        BigDecimal lots = d("816").divide(BigDecimal.valueOf(lot));
        BigDecimal cost = lots.multiply(d("12"))
                .add(BigDecimal.valueOf(lot).multiply(d("2")))
                .add(quote.goods(lot).multiply(lots));

        assertThat(cost).isEqualByComparingTo(yearly);
    }

    /** A line is rounded as it is invoiced, an exact half upwards: 3 × 0.335 = 1.005. */
    @ParameterizedTest(name = "{0} decimals: {1}")
    @CsvSource({"0, 1", "2, 1.01", "3, 1.005"})
    void a_line_is_rounded_to_the_minor_unit_of_its_currency(int digits, BigDecimal goods) {
        Quote quote = new Quote(
                0, 0, d("1"), d("1"), 1, d("0"), List.of(tier("0", "0.335")), d("0"), BigDecimal.ONE, digits, 0, 0);

        assertThat(quote.goods(3)).isEqualByComparingTo(goods);
    }

    /** Freight of 10 over three lines of 1 each: thirds that cannot be written as decimals, and still add up. */
    @Test
    void shares_that_cannot_be_written_down_still_add_up() {
        Vendor vendor =
                new Vendor("freight", BigDecimal.ONE, d("0"), d("10"), d("0"), d("0"), d("0"), null, DutyBasis.CIF);
        List<Quote> quotes =
                List.of(quote("1", tier("0", "1")), quote("2", tier("0", "1")), quote("3", tier("0", "1")));
        PurchasePlan plan = new PurchasePlan(List.of(line(0, 1), line(1, 1), line(2, 1)));

        PlanCost cost =
                PlanCost.of(PurchaseProblem.once(List.of(Need.once("oil", d("6"))), List.of(vendor), quotes), plan);

        assertThat(cost.outlay()).isEqualByComparingTo("13");
        assertThat(cost.lines().stream().map(LineCost::landed).reduce(BigDecimal.ZERO, BigDecimal::add))
                .isEqualByComparingTo("13");
    }

    private static Tier priced(String fromAndPrice) {
        String[] parts = fromAndPrice.split(":", 2);
        return tier(parts[0], parts[1]);
    }

    private static OrderCost umbrellas(DutyBasis basis) {
        Vendor vendor = new Vendor("umbrellas", BigDecimal.ONE, d("0"), d("500"), d("0"), d("0"), d("0"), null, basis);
        Quote quote =
                new Quote(0, 0, d("1"), d("0"), 1, d("0"), List.of(tier("0", "5")), d("0.04"), BigDecimal.ONE, 2, 0, 0);
        return cost(vendor, quote, 2000).orders().get(0);
    }

    private static PlanCost cost(Vendor vendor, Quote quote, long packs) {
        PurchaseProblem problem =
                PurchaseProblem.once(List.of(Need.once("oil", d("1"))), List.of(vendor), List.of(quote));
        return PlanCost.of(problem, new PurchasePlan(List.of(line(0, packs))));
    }

    private static PurchasePlan.Line line(int quote, long packs) {
        return new PurchasePlan.Line(quote, 0, packs);
    }
}
