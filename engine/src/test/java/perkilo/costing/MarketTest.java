package perkilo.costing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static perkilo.costing.Draft.d;
import static perkilo.costing.Draft.line;
import static perkilo.costing.Draft.material;
import static perkilo.costing.Draft.offerOf;
import static perkilo.costing.Draft.price;
import static perkilo.costing.Draft.supplier;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import perkilo.model.Batching;
import perkilo.model.DeliveryTerm;
import perkilo.model.Supplier;
import perkilo.offers.LineTerms;
import perkilo.offers.Offer;
import perkilo.offers.Validity;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.purchasing.Quote;
import perkilo.purchasing.SearchLimits;
import perkilo.purchasing.Vendor;
import perkilo.units.Currencies;
import perkilo.units.Measure;

/**
 * Offers in base units, and the charges that come on top of them.
 *
 * <p>Units: 1 lb = 0.45359237 kg, 1 US gal = 3.785411784 L (NIST Special Publication 811, Appendix B). Rates: European
 * Central Bank, 21 February 2023.
 */
final class MarketTest {

    /** The charges of a supplier with freight of 50 and 0.40 per kg, 1 % insurance, 6.5 % duty. */
    @ParameterizedTest(name = "{0}: {1} and {2} per kg, {3}, {4}")
    @CsvSource({
        "EXW, 50, 0.4, 0.01, 0.065",
        "FCA, 50, 0.4, 0.01, 0.065",
        "FAS, 50, 0.4, 0.01, 0.065",
        "FOB, 50, 0.4, 0.01, 0.065",
        "CFR, 50, 0.4, 0.01, 0.065",
        "CIF, 50, 0.4, 0, 0.065",
        "CPT, 0, 0, 0.01, 0.065",
        "CIP, 0, 0, 0, 0.065",
        "DAP, 0, 0, 0, 0.065",
        "DPU, 0, 0, 0, 0.065",
        "DDP, 0, 0, 0, 0"
    })
    void what_the_seller_bears_is_left_out(
            DeliveryTerm terms, BigDecimal perOrder, BigDecimal perKg, BigDecimal insurance, BigDecimal duty) {
        Draft draft = selling("1", Measure.KG, price("10", Measure.KG));
        draft.suppliers.add(supplier("Oils", "EUR", terms));
        Market market = new Market(draft.book());
        Vendor vendor = market.vendors().get(0);

        assertThat(vendor.freightPerOrder()).isEqualByComparingTo(perOrder);
        assertThat(vendor.freightPerKg()).isEqualByComparingTo(perKg);
        assertThat(vendor.insurance()).isEqualByComparingTo(insurance);
        assertThat(market.listings("Jojoba oil").get(0).duty().value()).isEqualByComparingTo(duty);
    }

    /**
     * The whole way from the table of terms to the bill: 100 kg for 1,000; freight 50 + 0.40 × 100 = 90 where any of
     * the carriage is the buyer's, insurance 1 % of 1,000 = 10 where the seller takes none, 6.5 % duty on goods,
     * freight and insurance of the buyer's.
     */
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/perkilo/model/incoterms.csv", numLinesToSkip = 1)
    void landed_cost_under_each_term(
            DeliveryTerm terms,
            String mode,
            String exportClearance,
            String toPort,
            String mainCarriage,
            String insured,
            String onCarriage,
            String importDuty) {
        Draft draft = new Draft()
                .formula("Oil", Batching.ANY, line("Jojoba oil", "1"))
                .bulk("Oil", "100");
        draft.suppliers.add(supplier("Oils", "EUR", terms));
        draft.offers.add(offerOf("Oils", "Jojoba oil", "100", Measure.KG, "EUR", price("10", Measure.KG)));

        BigDecimal landed = outlay(draft);

        boolean toPlace = mode.equals("any") && mainCarriage.equals("seller");
        BigDecimal freight = toPlace || onCarriage.equals("seller") ? d("0") : d("90");
        BigDecimal insurance = insured.equals("buyer") ? d("10") : d("0");
        BigDecimal value = d("1000").add(freight).add(insurance);
        BigDecimal duty = importDuty.equals("buyer") ? value.multiply(d("0.065")) : d("0");
        assertThat(landed).isEqualByComparingTo(value.add(duty));
    }

    /** Goods 10,000 and freight 500 at 4 % land at 10,920, whether the rate is the offer's or the supplier's. */
    @ParameterizedTest(name = "supplier {0}, offer {1}")
    @CsvSource({"0.04, ", "0, 0.04", ", 0.04", "0.1, 0.04"})
    void duty_of_the_offer_is_charged_on_freight_per_order_too(@Nullable String ofSupplier, @Nullable String ofOffer) {
        Draft draft = new Draft()
                .formula("Oil", Batching.ANY, line("Jojoba oil", "1"))
                .bulk("Oil", "1000");
        draft.suppliers.add(new Supplier(
                "Oils",
                Draft.EUR,
                null,
                new Supplier.Minimum(null, null),
                new Supplier.Charges(
                        Figure.of("500"),
                        Figure.ZERO,
                        Figure.ZERO,
                        ofSupplier == null ? Figure.ZERO : Figure.of(ofSupplier)),
                Figure.ZERO,
                Origin.NONE));
        draft.offers.add(new Offer(
                "Oils",
                "Jojoba oil",
                Figure.of("1000"),
                Measure.KG,
                List.of(price("10", Measure.KG)),
                Draft.EUR,
                LineTerms.of(null, Figure.ONE, Draft.figure(ofOffer)),
                Validity.UNKNOWN,
                Origin.NONE));

        assertThat(outlay(draft)).isEqualByComparingTo("10920");
    }

    private static BigDecimal outlay(Draft draft) {
        CostOutcome outcome = new CostRuns(new EveryPurchase(), SearchLimits.usual()).cost(draft.book());
        return ((CostOutcome.Costed) outcome).runs().get(0).outlay();
    }

    @Test
    void without_a_term_the_charges_stand_as_they_are_typed() {
        Market.Charges charges = Market.charges(supplier("Oils", "EUR", null));

        assertThat(charges.freightPerOrder().value()).isEqualByComparingTo("50");
        assertThat(charges.insurance().value()).isEqualByComparingTo("0.01");
    }

    /** An offer's own duty goes before the supplier's, and neither is paid where the seller delivers duty paid. */
    @ParameterizedTest
    @EnumSource(DeliveryTerm.class)
    void duty_on_a_line(DeliveryTerm terms) {
        Draft draft = new Draft();
        draft.suppliers.add(supplier("Oils", "EUR", terms));
        draft.offers.add(withDuty(null));
        draft.offers.add(withDuty("0.03"));
        List<Quote> quotes = quotes(draft);

        boolean paid = terms == DeliveryTerm.DDP;
        assertThat(quotes.get(0).duty()).isEqualByComparingTo(paid ? "0" : "0.065");
        assertThat(quotes.get(1).duty()).isEqualByComparingTo(paid ? "0" : "0.03");
    }

    /** 50 lb at 12.50 per lb are 22.6796185 kg for 625, 27.557783 per kg. */
    @Test
    void a_pack_in_pounds() {
        Draft draft = selling("50", Measure.LB, price("12.50", Measure.LB));

        Quote quote = quotes(draft).get(0);

        assertThat(quote.packSize()).isEqualByComparingTo("22.6796185");
        assertThat(quote.kgPerPack()).isEqualByComparingTo("22.6796185");
        assertThat(quote.goods(1)).isEqualByComparingTo("625");
        assertThat(new Market(draft.book()).lowestPrice("Jojoba oil").orElseThrow())
                .isCloseTo(d("27.557783"), within(d("1e-6")));
    }

    /** A drum of 5 US gallons at 38.00 per gallon and 0.915 g/mL: 17.3182589118 kg for 190, 10.971080 per kg. */
    @Test
    void a_pack_in_gallons_through_the_density() {
        Draft draft = selling("5", Measure.US_GAL, price("38.00", Measure.US_GAL));

        Quote quote = quotes(draft).get(0);

        assertThat(quote.packSize()).isEqualByComparingTo("17.3182589118");
        assertThat(quote.goods(1)).isEqualByComparingTo("190");
        assertThat(new Market(draft.book()).lowestPrice("Jojoba oil").orElseThrow())
                .isCloseTo(d("10.971080"), within(d("1e-6")));
    }

    /** 25 kg at 0.009 per g; 200 L at 4.20 per kg and 0.915 g/mL; 180 kg at 3.00 per L of 0.915 kg. */
    @ParameterizedTest(name = "{0} {1} at {2} per {3}: {4}")
    @CsvSource({
        "25, KG, 0.009, G, 225.00",
        "200, L, 4.20, KG, 768.60",
        "183, KG, 3.00, L, 600.00",
        "1, LB, 10, KG, 4.54",
        "16, OZ, 8, LB, 8.00"
    })
    void a_price_may_be_for_another_unit_than_the_pack(
            String size, Measure unit, String amount, Measure per, BigDecimal goods) {
        assertThat(quotes(selling(size, unit, price(amount, per))).get(0).goods(1))
                .isEqualByComparingTo(goods);
    }

    /** One pound, typed in kilograms, at 0.125 per pound: exactly half a cent, which goes up. */
    @Test
    void a_price_for_another_unit_comes_out_exact_where_it_can() {
        Quote quote = quotes(selling("0.45359237", Measure.KG, price("0.125", Measure.LB)))
                .get(0);

        assertThat(quote.goods(1)).isEqualByComparingTo("0.13");
    }

    @Test
    void a_price_for_the_pack_is_taken_as_it_stands() {
        Quote quote = quotes(selling("25", Measure.KG, price("199.95", null))).get(0);

        assertThat(quote.goods(3)).isEqualByComparingTo("599.85");
    }

    /** Breaks at 0 and 100 lb, in kilograms of the quote: 45.359237. */
    @Test
    void breaks_and_minimum_are_in_the_pack_s_unit() {
        Draft draft = new Draft().material(material("Jojoba oil", "", null, null, "0", null));
        draft.offers.add(new Offer(
                "Oils",
                "Jojoba oil",
                Figure.of("10"),
                Measure.LB,
                List.of(price("9", Measure.LB), price("100", "8", Measure.LB)),
                Draft.EUR,
                LineTerms.of(Figure.of("20"), Figure.of("2"), null),
                Validity.UNKNOWN,
                Origin.NONE));

        Quote quote = quotes(draft).get(0);

        assertThat(quote.minimum()).isEqualByComparingTo("9.0718474");
        assertThat(quote.multiple()).isEqualTo(2);
        assertThat(quote.goods(9)).isEqualByComparingTo("810");
        assertThat(quote.goods(10)).isEqualByComparingTo("800");
        // the lowest of both breaks: 8 / 0.45359237
        assertThat(new Market(draft.book()).lowestPrice("Jojoba oil").orElseThrow())
                .isCloseTo(d("17.636980975"), within(d("1e-9")));
    }

    @Test
    void the_lowest_price_is_the_lowest_of_all_offers_in_home_currency() {
        Draft draft = selling("25", Measure.KG, price("8.00", Measure.KG)).rate("EUR", "USD", "1.0664");
        draft.offers.add(offerOf("Others", "Jojoba oil", "25", Measure.KG, "USD", price("7.9980", Measure.KG)));

        // 7.9980 / 1.0664
        assertThat(new Market(draft.book()).lowestPrice("jojoba OIL").orElseThrow())
                .isEqualByComparingTo("7.5");
        assertThat(new Market(draft.book()).lowestPrice("Argan oil")).isEmpty();
    }

    @Test
    void pieces_weigh_nothing_on_the_way() {
        Draft draft = new Draft();
        draft.offers.add(offerOf("Glass", "Jar", "250", Measure.EACH, "EUR", price("0.384", Measure.EACH)));
        Quote quote = quotes(draft, "Jar").get(0);

        assertThat(quote.packSize()).isEqualByComparingTo("250");
        assertThat(quote.kgPerPack()).isEqualByComparingTo("0");
        assertThat(quote.goods(1)).isEqualByComparingTo("96");
    }

    @Test
    void a_volume_without_a_density_cannot_be_measured() {
        Draft draft = new Draft().material(material("Jojoba oil", "", null, null, "0", null));
        draft.offers.add(offerOf("Oils", "Jojoba oil", "5", Measure.L, "EUR", price("50", null)));

        assertThat(new Market(draft.book()).listings("Jojoba oil")).isEmpty();
    }

    /** The costing date is 19 November 2026. */
    @ParameterizedTest(name = "quoted on {0}, valid until {1}: {2}")
    @CsvSource({
        ", , true",
        "2026-11-19, , true",
        "2026-11-20, , false",
        ", 2026-11-19, true",
        ", 2026-11-18, false",
        "2025-01-01, 2027-01-01, true"
    })
    void offers_hold_from_their_quote_to_their_last_day(
            @Nullable LocalDate quoted, @Nullable LocalDate until, boolean holds) {
        Draft draft = new Draft();
        draft.offers.add(new Offer(
                "Oils",
                "Jojoba oil",
                Figure.of("25"),
                Measure.KG,
                List.of(price("8", Measure.KG)),
                Draft.EUR,
                LineTerms.NONE,
                new Validity(quoted, until),
                Origin.NONE));

        assertThat(new Market(draft.book()).listings("Jojoba oil")).hasSize(holds ? 1 : 0);
        assertThat(new Market(draft.book()).suppliers()).hasSize(holds ? 1 : 0);
    }

    @Test
    void the_bank_keeps_nothing_of_what_is_paid_in_home_currency() {
        Draft draft = selling("25", Measure.KG, price("8", Measure.KG)).rate("EUR", "USD", "1.0664");
        draft.conversionMargin = Figure.of("0.02");
        draft.suppliers.add(Supplier.of("Oils", Draft.EUR));
        draft.suppliers.add(Supplier.of("Others", Currencies.of("USD")));
        draft.offers.add(offerOf("Others", "Jojoba oil", "25", Measure.KG, "USD", price("8", Measure.KG)));

        List<Vendor> vendors = new Market(draft.book()).vendors();

        assertThat(vendors.get(0).margin()).isEqualByComparingTo("0");
        assertThat(vendors.get(1).margin()).isEqualByComparingTo("0.02");
        assertThat(vendors.get(1).toHome().multiply(d("1.0664"))).isCloseTo(BigDecimal.ONE, within(d("1e-32")));
    }

    /** A supplier who invoices in dollars and quotes in pounds: 1.0664 / 0.87925 dollars for a pound. */
    @Test
    void a_quote_in_a_third_currency_is_invoiced_in_the_supplier_s() {
        Draft draft = new Draft().rate("EUR", "USD", "1.0664").rate("EUR", "GBP", "0.87925");
        draft.suppliers.add(Supplier.of("Oils", Currencies.of("USD")));
        draft.offers.add(offerOf("Oils", "Jojoba oil", "25", Measure.KG, "GBP", price("8", Measure.KG)));

        assertThat(quotes(draft).get(0).toVendorCurrency()).isCloseTo(d("1.21285186238"), within(d("1e-9")));
    }

    @Test
    void a_missing_rate_is_an_error() {
        Draft draft = new Draft();
        draft.offers.add(offerOf("Oils", "Jojoba oil", "25", Measure.KG, "USD", price("8", Measure.KG)));

        assertThatThrownBy(() -> new Market(draft.book()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no rate from USD to EUR on or before 2026-11-19");
    }

    private static Draft selling(String size, Measure unit, Offer.PriceBreak price) {
        Draft draft = new Draft().material(material("Jojoba oil", "", "0.915", null, "0", null));
        draft.offers.add(offerOf("Oils", "Jojoba oil", size, unit, "EUR", price));
        return draft;
    }

    private static Offer withDuty(@Nullable String duty) {
        return new Offer(
                "Oils",
                "Jojoba oil",
                Figure.of("25"),
                Measure.KG,
                List.of(price("8", Measure.KG)),
                Draft.EUR,
                LineTerms.of(null, Figure.ONE, Draft.figure(duty)),
                Validity.UNKNOWN,
                Origin.NONE);
    }

    private static List<Quote> quotes(Draft draft) {
        return quotes(draft, "Jojoba oil");
    }

    private static List<Quote> quotes(Draft draft, String item) {
        return new Market(draft.book())
                .listings(item).stream().map(listing -> listing.quote(0, 0, 0)).toList();
    }
}
