package perkilo.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static perkilo.reading.TestBook.value;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import perkilo.model.Book;
import perkilo.offers.Offer;
import perkilo.units.Measure;

/** Offers: price breaks, quotes that supersede one another, packs that do not fit. */
final class OffersTest {

    private static final List<String> HEADERS = List.of(
            "Supplier",
            "Item",
            "Pack size",
            "Pack unit",
            "From quantity",
            "Price",
            "Price per",
            "Currency",
            "Quoted on",
            "Valid until");
    private static final LocalDate OCTOBER = LocalDate.of(2026, 10, 1);
    private static final LocalDate NOVEMBER = LocalDate.of(2026, 11, 1);

    @Test
    void price_breaks_are_sorted() {
        Book book =
                offers(shea(100, 6.0, OCTOBER), shea("", 6.5, OCTOBER)).read().value();

        assertThat(book.offersFor("Shea butter"))
                .singleElement()
                .satisfies(offer -> assertThat(offer.breaks())
                        .extracting(each -> each.price().value().toPlainString())
                        .containsExactly("6.5", "6"));
    }

    @Test
    void a_larger_quantity_that_costs_more_is_a_warning() {
        assertThat(offers(shea("", 6.5, OCTOBER), shea(100, 6.6, OCTOBER)).findings())
                .containsExactly(
                        "warning Offers!F3: The price from 100 kg is above the price from a smaller quantity in "
                                + "Offers!F2. Check both.");
    }

    @Test
    void two_prices_for_one_break() {
        assertThat(offers(shea("", 6.5, OCTOBER), shea("", 6.4, OCTOBER)).findings())
                .containsExactly(
                        "error Offers!F3: This is a second price from the same quantity; the first is in Offers!F2. "
                                + "Keep one, or type the date of each quote.");
        assertThat(offers(shea("", 6.5, OCTOBER), shea("", 6.5, OCTOBER)).findings())
                .containsExactly("warning Offers!A3: The same offer is already in Offers!A2. Delete one of them.");
    }

    @Test
    void the_newest_quote_holds_and_older_ones_are_history() {
        TestBook book = offers(shea("", 6.5, NOVEMBER), shea("", 6.4, OCTOBER));

        assertThat(book.findings())
                .containsExactly(
                        "note Offers!A3: The newer quote of 2026-11-01 in Offers!A2 is used instead of this one.");
        assertThat(price(book)).isEqualTo("6.5");
    }

    @Test
    void after_a_promotion_the_list_price_is_used_again() {
        LocalDate ended = LocalDate.of(2026, 11, 19);
        TestBook book = offers(shea("", 6.5, OCTOBER), row("Shea butter", 25, "kg", "", 5.9, "kg", NOVEMBER, ended));

        // 1 October + 180 days
        assertThat(book.findings())
                .containsExactly(
                        "warning Offers!A2: The newer quote of 2026-11-01 in Offers!A3 ended on 2026-11-19, so "
                                + "this quote of 2026-10-01 is used again, until 2027-03-30 by \"Price age limit days\", because "
                                + "its \"Valid until\" is blank. Ask the supplier which price is valid.");
        assertThat(price(book)).isEqualTo("6.5");
    }

    @Test
    void during_a_promotion_orders_after_it_are_planned_at_the_list_price() {
        LocalDate ends = LocalDate.of(2026, 11, 30);
        TestBook book = offers(
                row("Shea butter", 25, "kg", "", 6.5, "kg", OCTOBER, LocalDate.of(2026, 12, 31)),
                row("Shea butter", 25, "kg", "", 5.9, "kg", NOVEMBER, ends));

        assertThat(book.findings())
                .containsExactly("warning Offers!A2: The newer quote of 2026-11-01 in Offers!A3 ends on 2026-11-30. "
                        + "Orders from 2026-12-01 on are planned at this quote of 2026-10-01 again, until 2026-12-31. Ask "
                        + "the supplier which price is valid then.");
        Book read = book.read().value();
        assertThat(read.offersFor("Shea butter")).hasSize(2);
        assertThat(read.prices().orderableOn(ends, "Shea butter"))
                .containsExactly(read.offersFor("Shea butter").get(1));
        assertThat(read.prices().orderableOn(ends.plusDays(1), "Shea butter"))
                .containsExactly(read.offersFor("Shea butter").get(0));
    }

    @Test
    void a_list_of_long_ago_does_not_come_back() {
        TestBook book = offers(
                shea("", 6.5, LocalDate.of(2024, 11, 1)),
                row("Shea butter", 25, "kg", "", 5.9, "kg", OCTOBER, NOVEMBER),
                row("Shea butter", 5, "kg", "", 7.1, "kg", OCTOBER, ""));

        assertThat(book.findings())
                .containsExactly(
                        "note Offers!A2: The newer quote of 2026-10-01 in Offers!A3 has followed this one. Neither is "
                                + "valid on the costing date 2026-11-20.",
                        "warning Offers!J3: The offer of \"Shea butter\" by Tarnholt Oleo expired on 2026-11-01, before "
                                + "the costing date 2026-11-20, so it is not used. Ask for a new quote.");
        assertThat(book.read().value().prices().orderableOn(TestBook.TODAY, "Shea butter"))
                .extracting(Offer::pack)
                .containsExactly("5 kg");
    }

    @Test
    void a_quote_without_a_date_does_not_come_back() {
        TestBook book = offers(
                row("Shea butter", 25, "kg", "", 6.5, "kg", "", ""),
                row("Shea butter", 25, "kg", "", 5.9, "kg", OCTOBER, NOVEMBER),
                row("Shea butter", 5, "kg", "", 7.1, "kg", OCTOBER, ""));

        assertThat(book.findings())
                .contains(
                        "warning Offers!A2: This quote has no date, and the quote of 2026-10-01 in Offers!A3 is not "
                                + "valid on the costing date 2026-11-20. If this one is newer, type the day on which it was quoted.");
    }

    @Test
    void a_gallon_of_a_supplier_in_euros_is_a_question() {
        assertThat(offers(row("Shea butter", 5, "gal", "", 38, "gal", OCTOBER, ""), shea("", 6.5, OCTOBER))
                        .findings())
                .containsExactly(
                        "error Offers!D2: Pack unit says \"gal\": a US gallon (3.785411784 L) or an imperial gallon "
                                + "(4.54609 L)? 5 gal = 18.927 L (US) or 22.73 L (imperial). Type US gal or imp gal. Do the same in Price per. "
                                + "The US gallon is assumed only of a supplier who invoices in USD; Tarnholt Oleo invoices in EUR.");
    }

    @Test
    void a_gallon_of_a_supplier_in_dollars_is_a_us_gallon() {
        TestBook book = offers(row("Shea butter", 5, "gal", "", 38, "gallon", OCTOBER, ""), shea("", 6.5, OCTOBER));
        book.set("Suppliers", "B2", "USD")
                .set("Offers", "H2", "EUR")
                .sheet("Rates", List.of("From", "To", "Rate", "Date"), List.of("EUR", "USD", 1.25, TestBook.TODAY));
        Offer offer = book.read().value().offersFor("Shea butter").get(0);
        assertThat(offer.packUnit()).isEqualTo(Measure.US_GAL);
        assertThat(offer.breaks().get(0).per()).isEqualTo(Measure.US_GAL);
    }

    /** The supplier's currency decides, not that of the row, unless the supplier is unknown. */
    @Test
    void a_row_in_dollars_decides_only_where_the_supplier_is_unknown() {
        TestBook inDollars = offers(row("Shea butter", 5, "gal", "", 38, "gal", OCTOBER, ""), shea("", 6.5, OCTOBER))
                .set("Offers", "H2", "USD");
        assertThat(inDollars.findings()).anyMatch(text -> text.contains("Tarnholt Oleo invoices in EUR"));
        assertThat(inDollars.set("Offers", "A2", "Fen").findings()).noneMatch(text -> text.contains("imperial"));
    }

    @Test
    void gallons_that_say_whose_they_are_are_read() {
        Book book = offers(
                        row("Shea butter", 5, "gallons (US)", "", 38, "US gal", OCTOBER, ""),
                        row("Shea butter", 5, "Imp. gallon", "", 44, "UK gal", OCTOBER, ""))
                .set("Materials", "D1", "Density g/mL")
                .set("Materials", "D2", 0.9)
                .set("Materials", "D3", 0.9)
                .read()
                .value();
        assertThat(book.offersFor("Shea butter"))
                .extracting(Offer::packUnit)
                .containsExactly(Measure.US_GAL, Measure.IMP_GAL);
        assertThat(book.offersFor("Shea butter"))
                .extracting(offer -> offer.breaks().get(0).per())
                .containsExactly(Measure.US_GAL, Measure.IMP_GAL);
    }

    @Test
    void a_header_in_gallons_is_asked_about_once() {
        TestBook book = TestBook.sound()
                .sheet(
                        "Offers",
                        List.of("Supplier", "Item", "Pack size (gal)", "Price", "Price per"),
                        List.of("Tarnholt Oleo", "Shea butter", 5, 30, "pack"),
                        List.of("Tarnholt Oleo", "Sunflower oil", 5, 30, "pack"));
        assertThat(book.findings())
                .filteredOn(text -> text.contains("imperial"))
                .containsExactly(
                        "error Offers!C1: Pack size says \"gal\": a US gallon (3.785411784 L) or an imperial gallon "
                                + "(4.54609 L)? Type US gal or imp gal. The US gallon is assumed only of a supplier who invoices "
                                + "in USD; Tarnholt Oleo invoices in EUR.");
    }

    @Test
    void a_number_format_in_gallons_is_asked_about_at_its_cell() {
        TestBook book = TestBook.sound()
                .sheet(
                        "Offers",
                        List.of("Supplier", "Item", "Pack size", "Price", "Price per"),
                        List.of("Tarnholt Oleo", "Shea butter", 5, 30, "pack"))
                .set("Offers", "C2", 5, "0 \"gal\"");
        assertThat(book.findings())
                .anyMatch(text -> text.startsWith("error Offers!C2: Pack size says \"gal\": a US gallon")
                        && text.contains("5 gal = 18.927 L (US) or 22.73 L (imperial)"));
    }

    @Test
    void gallons_of_fills_and_stock_are_questions() {
        assertThat(TestBook.sound().set("Products", "D2", "gal").findings())
                .anyMatch(text -> text.startsWith("error Products!D2: Fill unit says \"gal\""));
        TestBook stock = TestBook.sound()
                .sheet("Stock", List.of("Item", "Quantity", "Unit"), List.of("Shea butter", "2 gal", ""));
        assertThat(stock.findings()).anyMatch(text -> text.startsWith("error Stock!B2: Quantity says \"gal\""));
    }

    @Test
    void a_pack_in_grams_is_the_same_as_one_in_kilograms() {
        Book book = offers(
                        row("Shea butter", 25, "kg", "", 6.5, "kg", OCTOBER, ""),
                        row("Shea butter", 25_000, "g", "", 6.4, "kg", NOVEMBER, ""))
                .read()
                .value();

        assertThat(book.offersFor("Shea butter"))
                .singleElement()
                .extracting(Offer::pack)
                .isEqualTo("25000 g");
    }

    @Test
    void a_quote_of_a_coming_day_is_announced() {
        LocalDate future = LocalDate.of(2026, 12, 1);
        TestBook book = offers(shea("", 6.5, future), shea("", 6.4, OCTOBER));

        assertThat(book.findings())
                .containsExactly(
                        "warning Offers!I2: This price is quoted on 2026-12-01, after the costing date 2026-11-20. "
                                + "Orders from that day on are planned at this price; costs use the quote in Offers!A3.");
        assertThat(book.read().value().offersFor("Shea butter"))
                .extracting(offer -> offer.quotedOn() + " "
                        + offer.breaks().get(0).price().value().toPlainString())
                .containsExactly("2026-12-01 6.5", "2026-10-01 6.4");
        assertThat(offers(shea("", 6.5, future)).findings())
                .containsExactly(
                        "warning Offers!I2: This price is quoted on 2026-12-01, after the costing date 2026-11-20. "
                                + "Orders from that day on are planned at this price; costs do not use it yet.");
    }

    @Test
    void an_announced_price_that_ends_before_it_begins_is_not_used() {
        TestBook book = offers(
                row("Shea butter", 25, "kg", "", 6.5, "kg", LocalDate.of(2026, 12, 1), LocalDate.of(2026, 11, 30)));

        assertThat(book.findings())
                .containsExactly(
                        "warning Offers!J2: The offer of \"Shea butter\" by Tarnholt Oleo is quoted on 2026-12-01 but "
                                + "valid only until 2026-11-30, so it is not used. Correct one of the two days.");
    }

    @Test
    void litres_without_a_density_stop_nothing_where_they_take_no_part() {
        List<?> announced = row("Sunflower oil", 5, "L", "", 3.0, "L", LocalDate.of(2026, 12, 1), "");
        List<?> expired = row("Sunflower oil", 5, "L", "", 3.0, "L", OCTOBER, LocalDate.of(2026, 11, 19));
        List<?> holds = row("Sunflower oil", 5, "L", "", 3.0, "L", OCTOBER, LocalDate.of(2026, 11, 20));

        assertThat(offers(shea("", 6.5, OCTOBER), announced).findings()).noneMatch(one -> one.startsWith("error"));
        assertThat(offers(shea("", 6.5, OCTOBER), expired).findings()).noneMatch(one -> one.startsWith("error"));
        assertThat(offers(shea("", 6.5, OCTOBER), holds).findings())
                .containsExactly(
                        "error Offers!C3: \"Sunflower oil\" is sold by volume, but its density is unknown. Fill Density "
                                + "g/mL in Materials.");
    }

    @Test
    void expired_and_old_quotes_are_warnings() {
        assertThat(offers(row("Shea butter", 25, "kg", "", 6.5, "kg", OCTOBER, LocalDate.of(2026, 11, 1)))
                        .findings())
                .containsExactly(
                        "warning Offers!J2: The offer of \"Shea butter\" by Tarnholt Oleo expired on 2026-11-01, before "
                                + "the costing date 2026-11-20, so it is not used. Ask for a new quote.");
        assertThat(offers(shea("", 6.5, LocalDate.of(2026, 5, 1))).findings())
                .containsExactly(
                        "warning Offers!I2: This quote of 2026-05-01 is 203 days older than the costing date; the limit "
                                + "is 180 days. Ask for a new quote.");
    }

    @Test
    void litres_need_a_density() {
        assertThat(TestBook.sound()
                        .set("Offers", "D3", "L")
                        .set("Offers", "G3", "L")
                        .findings())
                .containsExactly(
                        "error Offers!C3: \"Sunflower oil\" is sold by volume, but its density is unknown. Fill Density "
                                + "g/mL in Materials.");
        assertThat(TestBook.sound()
                        .set("Offers", "D2", "L")
                        .set("Offers", "G2", "L")
                        .findings())
                .isEmpty();
    }

    @Test
    void litres_of_what_nothing_uses_are_left_out() {
        TestBook book = offers(shea("", 6.5, OCTOBER), row("Argan oil", 5, "L", "", 30, "L", OCTOBER, ""));

        assertThat(book.findings())
                .containsExactly(
                        "warning Offers!C3: \"Argan oil\" is sold by volume, but its density is unknown. Fill Density "
                                + "g/mL in Materials. The offer is ignored, because no formula uses it.");
        assertThat(book.read().value().offersFor("Argan oil")).isEmpty();
    }

    @Test
    void a_material_comes_by_weight_and_a_component_in_pieces() {
        assertThat(TestBook.sound()
                        .set("Offers", "D2", "each")
                        .set("Offers", "G2", "each")
                        .findings())
                .containsExactly(
                        "error Offers!C2: The pack of \"Shea butter\" is in pieces, but it is a raw material. Use a "
                                + "unit such as kg or L.");
        assertThat(TestBook.sound()
                        .set("Offers", "D4", "kg")
                        .set("Offers", "G4", "kg")
                        .findings())
                .containsExactly(
                        "error Offers!C4: The pack of \"Jar\" is in kg, but it is a component. Use pieces (each).");
    }

    @Test
    void a_price_of_zero_is_a_warning() {
        assertThat(TestBook.sound().set("Offers", "F2", 0).findings())
                .containsExactly("warning Offers!F2: Price is 0: treated as free of charge.");
    }

    @Test
    void a_duty_typed_as_a_fraction_is_pointed_out_once_for_a_list() {
        assertThat(TestBook.sound()
                        .set("Offers", "I1", "Duty %")
                        .set("Offers", "I2", 0.065)
                        .set("Offers", "I3", 0.017)
                        .set("Offers", "I4", 6.5)
                        .findings())
                .containsExactly(
                        "warning Offers!I2: Duty % is 0.065, which means 0.065 %. For 6.5 %, type 6.5 or format the "
                                + "cell as a percentage. The same holds for 1 more quote of this list.");
    }

    @Test
    void the_rows_of_one_offer_must_agree() {
        assertThat(offers(
                                row("Shea butter", 25, "kg", "", 6.5, "kg", OCTOBER, LocalDate.of(2027, 1, 31)),
                                row("Shea butter", 25, "kg", 100, 6.4, "kg", OCTOBER, LocalDate.of(2027, 2, 28)))
                        .findings())
                .containsExactly(
                        "error Offers!J3: Valid until differs from the row of the same offer in Offers!A2. Correct one "
                                + "of them.");
    }

    @Test
    void an_order_multiple_is_a_whole_number() {
        List<String> findings = TestBook.sound()
                .set("Offers", "I1", "Order multiple")
                .set("Offers", "I2", 1.5)
                .set("Offers", "I3", 0)
                .findings();

        assertThat(findings)
                .containsExactly(
                        "error Offers!I2: Order multiple is 1.5. It must be a whole number.",
                        "error Offers!I3: Order multiple is 0. It must be a whole number of 1 or more.");
    }

    @Test
    void a_supplier_without_a_row_and_with_offers_in_two_currencies_is_asked_about() {
        TestBook book = TestBook.sound()
                .set("Offers", "A2", "Nordal")
                .set("Offers", "A3", "Nordal")
                .set("Offers", "H3", "USD")
                .sheet("Rates", List.of("From", "To", "Rate", "Date"), List.of("EUR", "USD", 1.1, "2026-11-20"));

        assertThat(book.findings())
                .anySatisfy(finding -> assertThat(finding)
                        .startsWith("warning Offers!A3: \"Nordal\" has no row in Suppliers, and offers in EUR and USD. "
                                + "They are assumed to invoice in EUR."));
    }

    @Test
    void a_supplier_without_a_row_has_the_currency_of_their_offers() {
        TestBook book = TestBook.sound().set("Offers", "A2", "Tarnholt Oil");

        assertThat(book.findings())
                .containsExactly(
                        "warning Offers!A2: The supplier \"Tarnholt Oil\" has no row in Suppliers, so their charges are "
                                + "unknown. Did you mean \"Tarnholt Oleo\"?");
        assertThat(book.read()
                        .value()
                        .supplier("Tarnholt Oil")
                        .orElseThrow()
                        .currency()
                        .getCurrencyCode())
                .isEqualTo("EUR");
    }

    @Test
    void a_supplier_whose_currency_is_blank_has_that_of_their_offers() {
        TestBook book = TestBook.sound().set("Suppliers", "B2", "");

        assertThat(book.findings()).isEmpty();
        assertThat(book.read()
                        .value()
                        .supplier("Tarnholt Oleo")
                        .orElseThrow()
                        .currency()
                        .getCurrencyCode())
                .isEqualTo("EUR");
    }

    @Test
    void minimum_and_multiple_are_read() {
        Offer offer = TestBook.sound()
                .set("Offers", "I1", "MOQ")
                .set("Offers", "I2", "50 kg")
                .set("Offers", "J1", "Order multiple")
                .set("Offers", "J2", 2)
                .read()
                .value()
                .offersFor("Shea butter")
                .get(0);

        assertThat(value(offer.minimumOrder())).isEqualByComparingTo("50");
        assertThat(offer.orderMultiple().value()).isEqualByComparingTo("2");
    }

    private static String price(TestBook book) {
        return book.read()
                .value()
                .offersFor("Shea butter")
                .get(0)
                .breaks()
                .get(0)
                .price()
                .value()
                .toPlainString();
    }

    private static List<?> shea(Object from, double price, LocalDate quoted) {
        return row("Shea butter", 25, "kg", from, price, "kg", quoted, "");
    }

    private static List<?> row(
            String item, int size, String unit, Object from, double price, String per, Object quoted, Object until) {
        return List.of("Tarnholt Oleo", item, size, unit, from, price, per, "EUR", quoted, until);
    }

    private static TestBook offers(List<?>... rows) {
        List<List<?>> all = new ArrayList<>();
        all.add(HEADERS);
        all.addAll(List.of(rows));
        all.add(row("Sunflower oil", 20, "kg", "", 3.2, "kg", OCTOBER, ""));
        all.add(row("Jar", 100, "each", "", 0.62, "each", OCTOBER, ""));
        return TestBook.sound().sheet("Offers", all.toArray(List[]::new));
    }
}
