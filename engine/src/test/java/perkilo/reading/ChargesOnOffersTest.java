package perkilo.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static perkilo.reading.TestBook.value;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import perkilo.model.Supplier;
import perkilo.offers.Offer;

/** Charges, terms and discounts in the rows of offers. */
final class ChargesOnOffersTest {

    @Test
    void of_a_supplier_without_a_row_only_what_their_offers_do_not_say_is_unknown() {
        assertThat(book("Freight per order", 85, 85)
                        .set("Suppliers", "A2", "Another supplier")
                        .findings())
                .contains(
                        "warning Offers!A2: The supplier \"Tarnholt Oleo\" has no row in Suppliers, and their offers do "
                                + "not say: Terms, Minimum order value, Small-order charge, Freight per kg, Insurance %, Lead time "
                                + "days. Add a row for them, or fill these columns of their offers.");
    }

    private static TestBook book(String header, Object first, Object second) {
        return TestBook.sound()
                .set("Offers", "I1", header)
                .set("Offers", "I2", first)
                .set("Offers", "I3", second);
    }

    @Test
    void what_all_rows_of_a_supplier_say_is_the_suppliers() {
        var reading = book("Freight per order", 85, 85)
                .set("Offers", "J1", "Lead time (weeks)")
                .set("Offers", "J2", 2)
                .set("Offers", "J3", 2)
                .set("Offers", "K1", "Freight €/kg")
                .set("Offers", "K2", 0.28)
                .set("Offers", "K3", 0.28)
                .read();
        assertThat(reading.findings()).isEmpty();
        Supplier supplier = reading.value().supplier("Tarnholt Oleo").orElseThrow();
        assertThat(supplier.freightPerOrder().value()).isEqualByComparingTo("85");
        assertThat(supplier.freightPerKg().value()).isEqualByComparingTo("0.28");
        assertThat(value(supplier.leadTimeDays())).isEqualByComparingTo("14");
        assertThat(reading.value()
                        .supplier("Jarrowglass")
                        .orElseThrow()
                        .freightPerOrder()
                        .isZero())
                .isTrue();
    }

    @Test
    void rows_that_disagree_are_an_error_that_names_both_cells() {
        assertThat(book("Freight per order", 85, 40).findings())
                .containsExactly(
                        "error Offers!I3: Freight per order of \"Tarnholt Oleo\" is 40 here and 85 in Offers!I2. It "
                                + "holds for all orders from one supplier: type the same in all rows, or type it once on Suppliers.");
    }

    @Test
    void a_value_on_some_rows_is_used_with_a_warning() {
        var reading = book("Freight per kg", 0.28, "").read();
        assertThat(reading.findings())
                .singleElement()
                .asString()
                .startsWith(
                        "warning Offers!I3: Freight per kg of \"Tarnholt Oleo\" is blank here and 0.28 in Offers!I2.");
        assertThat(reading.value()
                        .supplier("Tarnholt Oleo")
                        .orElseThrow()
                        .freightPerKg()
                        .value())
                .isEqualByComparingTo("0.28");
    }

    @Test
    void offers_win_over_the_suppliers_own_row_where_all_of_them_say_it() {
        TestBook book = book("Freight per order", 85, 85)
                .set("Suppliers", "D1", "Freight per order")
                .set("Suppliers", "D2", 60);
        var reading = book.read();
        assertThat(reading.findings())
                .singleElement()
                .hasToString(
                        "warning Offers!I2: Freight per order of \"Tarnholt Oleo\" is 85 on all their offers and 60 in "
                                + "Suppliers!D2. The value on the offers is used. Correct the one that is wrong.");
        assertThat(reading.value()
                        .supplier("Tarnholt Oleo")
                        .orElseThrow()
                        .freightPerOrder()
                        .value())
                .isEqualByComparingTo("85");
        assertThat(book.set("Offers", "I3", "").findings())
                .singleElement()
                .asString()
                .startsWith(
                        "error Offers!I2: Freight per order of \"Tarnholt Oleo\" is 85 here, blank in other rows, and 60 "
                                + "in Suppliers!D2.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Discount %", "Rabatt %", "Remise (%)", "Sconto %", "Descuento %"})
    void a_discount_in_per_cent_is_taken_off_the_price(String header) {
        var reading = book(header, 5, "").read();
        Offer.PriceBreak price =
                reading.value().offersFor("Shea butter").get(0).breaks().get(0);
        assertThat(price.price().value()).isEqualByComparingTo("6.175"); // 6.5 × (1 − 0.05)
        assertThat(price.price().perCell()).as("no cell holds it").isNull();
        assertThat(reading.value()
                        .offersFor("Sunflower oil")
                        .get(0)
                        .breaks()
                        .get(0)
                        .price()
                        .perCell())
                .isNotNull();
        assertThat(reading.findings())
                .singleElement()
                .hasToString(
                        "note Offers!I1: \"" + header + "\" is applied to the prices. Results show the price after it, "
                                + "as a value without a link.");
    }

    @Test
    void a_surcharge_is_added() {
        assertThat(book("Zuschlag %", 10, "")
                        .read()
                        .value()
                        .offersFor("Shea butter")
                        .get(0)
                        .breaks()
                        .get(0)
                        .price()
                        .value())
                .isEqualByComparingTo("7.15"); // 6.5 × 1.1
    }

    @Test
    void a_discount_that_may_be_an_amount_is_asked_about() {
        assertThat(book("Discount", 0.5, "").findings())
                .contains(
                        "error Offers!I1: \"Discount\" may be in per cent or an amount. If it is in per cent, rename it to "
                                + "\"Discount %\". If it is an amount, put it into the prices and empty the column.");
        assertThat(TestBook.sound()
                        .set("Offers", "I1", "Discount")
                        .set("Offers", "I2", 0.05, "0%")
                        .read()
                        .value()
                        .offersFor("Shea butter")
                        .get(0)
                        .breaks()
                        .get(0)
                        .price()
                        .value())
                .isEqualByComparingTo("6.175");
    }

    @Test
    void a_freight_per_order_or_per_kilogram_is_asked_about() {
        assertThat(book("Freight", 85, 85).findings())
                .containsExactly(
                        "error Offers!I1: The column \"Freight\" may change costs, but it is not read. Rename it to "
                                + "the column that it is (Duty %, Surcharge %, Small-order charge, Freight per order, Freight per kg, "
                                + "Insurance %), or add \"(not needed)\" to its header.");
    }

    @Test
    void the_words_of_four_languages_are_read() {
        var reading = TestBook.sound()
                .drop("Offers")
                .drop("Balm")
                .drop("Components")
                .drop("Runs")
                .drop("Products")
                .drop("Suppliers")
                .sheet(
                        "Preisliste",
                        List.of("Lieferant", "Rohstoff", "Gebinde", "Preis €/kg", "Gültig bis"),
                        List.of("Tarnholt Oleo", "Shea butter", "25 kg", 6.5, "31.12.2027"))
                .sheet(
                        "Prix",
                        List.of("Fournisseur", "Matière première", "Conditionnement", "Prix", "Prix par", "Devise"),
                        List.of("Jarrowglass", "Sunflower oil", "20 kg", 3.2, "kg", "EUR"))
                .sheet(
                        "Fornitori",
                        List.of("Fornitore", "Valuta", "Tempi di consegna"),
                        List.of("Tarnholt Oleo", "EUR", 10),
                        List.of("Jarrowglass", "EUR", 5))
                .sheet(
                        "Receta",
                        List.of("Fase", "Materia prima", "% en peso"),
                        List.of("A", "Shea butter", 40),
                        List.of("A", "Sunflower oil", 60))
                .read();
        assertThat(reading.findings()).isEmpty();
        assertThat(reading.value().offers()).hasSize(2);
        assertThat(reading.value().formula("Receta").orElseThrow().lines()).hasSize(2);
        assertThat(value(reading.value().supplier("Tarnholt Oleo").orElseThrow().leadTimeDays()))
                .isEqualByComparingTo("10");
    }
}
