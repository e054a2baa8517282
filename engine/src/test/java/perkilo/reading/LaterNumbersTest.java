package perkilo.reading;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import perkilo.model.Book;
import perkilo.model.Supplier;
import perkilo.offers.Offer;
import perkilo.origin.Figure;

/** What a number would mean that is typed later into a cell which holds words, or nothing. */
final class LaterNumbersTest {

    /** The rule that the reader follows once a number is there is asked by typing one. */
    @ParameterizedTest(name = "{0} in a column that says \"{1}\", with pack unit \"{2}\"")
    @CsvSource({
        "25 kg, Pack size, kg",
        "25 kg, Pack size, ''",
        "25, Pack size (kg), ''",
        "25 kg, Pack size (kg), ''",
        "25000 g, Pack size (g), ''"
    })
    void a_pack_size_in_words_gives_way_to_a_number(String words, String header, String unit) {
        TestBook book = TestBook.sound()
                .set("Offers", "C1", header)
                .set("Offers", "C2", words)
                .set("Offers", "D2", unit);
        Figure size = butter(book).packSize();
        assertThat(size.held()).isEqualTo(Figure.Held.WORDS);
        assertThat(size.perCell()).isEqualByComparingTo("1");
        if (!unit.isEmpty() || header.contains("(")) {
            book.set("Offers", "C2", 24);
            assertThat(butter(book).packSize().value()).isEqualByComparingTo("24");
        }
    }

    @Test
    void a_pack_size_in_words_stays_where_the_header_speaks_of_another_unit() {
        Figure size = butter(TestBook.sound()
                        .set("Offers", "C1", "Pack size (g)")
                        .set("Offers", "C2", "25 kg")
                        .set("Offers", "D2", ""))
                .packSize();
        assertThat(size.value()).isEqualByComparingTo("25");
        assertThat(size.perCell()).isNull();
    }

    /** A minimum of 500 g of an offer in kg; a number there is in kg. */
    @Test
    void a_minimum_in_another_unit_gives_way_to_a_number_in_the_packs_unit() {
        TestBook book = TestBook.sound().set("Offers", "I1", "Minimum order").set("Offers", "I2", "500 g");
        Figure words = requireNonNull(butter(book).minimumOrder());
        assertThat(words.value()).isEqualByComparingTo("0.5");
        Figure number = requireNonNull(butter(book.set("Offers", "I2", 3)).minimumOrder());
        assertThat(number.value()).isEqualByComparingTo("3");
        assertThat(words.perCell()).isEqualByComparingTo(requireNonNull(number.perCell()));
    }

    @ParameterizedTest(name = "{0}, price per \"{1}\", currency \"{2}\", header {3}: {4}")
    @CsvSource({
        "'6,50', kg, EUR, Price, true",
        "'6,50 €', kg, EUR, Price, true",
        "'6,50 €', kg, '', Price, true",
        "'6,50 £', kg, '', Price, false",
        "'6,50 €/kg', kg, EUR, Price, true",
        "'6,50 €/kg', '', EUR, Price, false",
        "'6,50 €/kg', '', EUR, Price per kg, true",
        "'162,50 € per pack', '', EUR, Price, false"
    })
    void a_price_in_words_gives_way_to_a_number_where_all_else_is_said(
            String words, String per, String currency, String header, boolean live) {
        TestBook book = TestBook.sound()
                .set("Offers", "F1", header)
                .set("Offers", "F2", words)
                .set("Offers", "G2", per)
                .set("Offers", "H2", currency);
        if (words.contains("£")) {
            book.sheet(
                    "Rates",
                    List.of("From", "To", "Rate", "Date"),
                    List.of("GBP", "EUR", 1.15, LocalDate.of(2026, 11, 19)));
        }
        Figure price = butter(book).breaks().get(0).price();
        assertThat(price.held()).isEqualTo(Figure.Held.WORDS);
        assertThat(price.perCell() != null).isEqualTo(live);
    }

    /** Typing 2 %, or 2, may change the cell's format, which its formula asks for. */
    @ParameterizedTest
    @ValueSource(strings = {"", "6.5 %"})
    void a_percentage_that_is_blank_or_in_words_is_followed(String words) {
        TestBook book = TestBook.sound().set("Suppliers", "D1", "Duty %").set("Suppliers", "D3", 6.5);
        if (!words.isEmpty()) {
            book.set("Suppliers", "D2", words);
        }
        Figure duty = supplier(book).duty();
        assertThat(duty.value()).isEqualByComparingTo(words.isEmpty() ? "0" : "0.065");
        assertThat(duty.perCell()).isEqualByComparingTo("0.01");
    }

    /** Blank: no minimum order value, and no charge that would allow less; duty of an offer: the supplier's. */
    @Test
    void what_is_not_zero_where_it_is_blank_has_no_cell() {
        TestBook book = TestBook.sound()
                .set("Suppliers", "D1", "Minimum order value")
                .set("Suppliers", "E1", "Small-order charge")
                .set("Offers", "I1", "Duty %")
                .set("Offers", "I3", 6.5);
        assertThat(supplier(book).minimumOrderValue()).isNull();
        assertThat(supplier(book).smallOrderCharge()).isNull();
        assertThat(butter(book).duty()).isNull();
    }

    @Test
    void a_column_that_the_table_lacks_has_no_cell() {
        Supplier supplier = supplier(TestBook.sound());
        assertThat(supplier.freightPerOrder()).isEqualTo(Figure.ZERO);
        assertThat(supplier.freightPerOrder().origin().isKnown()).isFalse();
    }

    @Test
    void freight_that_is_blank_keeps_its_cell_and_a_dash_counts_as_words() {
        TestBook book = TestBook.sound()
                .set("Suppliers", "D1", "Freight per order")
                .set("Suppliers", "E1", "Freight per kg")
                .set("Suppliers", "E2", "–");
        Supplier supplier = supplier(book);
        assertThat(supplier.freightPerOrder().held()).isEqualTo(Figure.Held.NOTHING);
        assertThat(supplier.freightPerOrder().origin().where()).isEqualTo("Suppliers!D2");
        assertThat(supplier.freightPerKg().held()).isEqualTo(Figure.Held.WORDS);
        assertThat(supplier.freightPerKg().isZero()).isTrue();
    }

    private static Supplier supplier(TestBook book) {
        return read(book).supplier("Tarnholt Oleo").orElseThrow();
    }

    private static Offer butter(TestBook book) {
        return read(book).offersFor("Shea butter").get(0);
    }

    private static Book read(TestBook book) {
        var reading = book.read();
        assertThat(reading.hasErrors()).as(reading.findings().toString()).isFalse();
        return reading.value();
    }
}
