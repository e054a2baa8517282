package perkilo.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Gaps;
import perkilo.model.Gaps.Kind;
import perkilo.offers.Offer;

/** Each error takes out what depends on its cell, and nothing else. */
final class ReachTest {

    @Test
    void a_sound_book_has_no_gaps() {
        assertThat(TestBook.sound().read().value().gaps()).isEqualTo(Gaps.NONE);
    }

    /** The kind of gap that one bad cell makes, and the name that depends on it. */
    static Stream<Arguments> cells() {
        return Stream.of(
                Arguments.of("Offers", "F2", "ask", Kind.OFFER, "Shea butter"),
                Arguments.of("Offers", "C2", "big", Kind.OFFER, "Shea butter"),
                Arguments.of("Suppliers", "B3", "shells", Kind.OFFER, "Jar"),
                Arguments.of("Materials", "C2", "heavy", Kind.ITEM, "Shea butter"),
                Arguments.of("Balm", "C2", "some", Kind.RECIPE, "Balm"),
                Arguments.of("Balm", "C3", 61, Kind.RECIPE, "Balm"),
                Arguments.of("Balm", "B3", "Motor oil", Kind.NO_OFFER, "Motor oil"),
                Arguments.of("Products", "C2", "some", Kind.PRODUCT, "Balm 30"),
                Arguments.of("Products", "B2", "Balsam", Kind.PRODUCT, "Balm 30"),
                Arguments.of("Components", "C2", "few", Kind.COMPONENT, "Balm 30"),
                Arguments.of("Components", "A2", "Balm 31", Kind.COMPONENT, "Balm 30"),
                Arguments.of("Settings", "B2", "money", Kind.EVERYTHING, ""),
                Arguments.of("Settings", "B3", "soon", Kind.EVERYTHING, ""));
    }

    @ParameterizedTest(name = "{0}!{1} = {2}")
    @MethodSource("cells")
    void one_bad_cell_makes_one_gap(String sheet, String cell, Object value, Kind kind, String name) {
        Gaps gaps = TestBook.sound().set(sheet, cell, value).read().value().gaps();

        assertThat(gaps.of(kind, name)).as(gaps.toString()).isNotEmpty();
        assertThat(gaps.isEverything()).isEqualTo(kind == Kind.EVERYTHING);
    }

    @Test
    void the_other_packs_of_an_item_stay() {
        Book book = TestBook.sound()
                .sheet(
                        "Offers",
                        List.of("Supplier", "Item", "Pack size", "Pack unit", "From quantity", "Price", "Price per"),
                        List.of("Tarnholt Oleo", "Shea butter", 25, "kg", "", 6.5, "kg"),
                        List.of("Tarnholt Oleo", "Shea butter", 25, "kg", 100, "ask", "kg"),
                        List.of("Tarnholt Oleo", "Shea butter", 5, "kg", "", 7.9, "kg"),
                        List.of("Tarnholt Oleo", "Sunflower oil", 20, "kg", "", 3.2, "kg"),
                        List.of("Jarrowglass", "Jar", 100, "each", "", 0.62, "each"))
                .read()
                .value();

        assertThat(book.offersFor("Shea butter")).extracting(Offer::pack).containsExactly("5 kg");
        assertThat(book.offers()).hasSize(3);
    }

    @Test
    void a_pack_whose_size_cannot_be_read_takes_out_all_packs_of_that_supplier_and_item() {
        Book book = TestBook.sound()
                .sheet(
                        "Offers",
                        List.of("Supplier", "Item", "Pack size", "Pack unit", "From quantity", "Price", "Price per"),
                        List.of("Tarnholt Oleo", "Shea butter", "big", "kg", "", 6.5, "kg"),
                        List.of("Tarnholt Oleo", "Shea butter", 5, "kg", "", 7.9, "kg"),
                        List.of("Jarrowglass", "Shea butter", 10, "kg", "", 7.5, "kg"),
                        List.of("Tarnholt Oleo", "Sunflower oil", 20, "kg", "", 3.2, "kg"),
                        List.of("Jarrowglass", "Jar", 100, "each", "", 0.62, "each"))
                .read()
                .value();

        assertThat(book.offersFor("Shea butter")).extracting(Offer::supplier).containsExactly("Jarrowglass");
    }

    @Test
    void an_unreadable_line_takes_the_balance_with_it() {
        Formula formula = TestBook.sound()
                .sheet(
                        "Balm",
                        List.of("Phase", "Material", "% w/w"),
                        List.of("A", "Shea butter", "some"),
                        List.of("A", "Sunflower oil", "q.s."),
                        List.of("A", "Jar", 2))
                .read()
                .value()
                .formula("Balm")
                .orElseThrow();

        assertThat(formula.lines()).extracting(Formula.Line::material).containsExactly("Jar");
    }

    @Test
    void a_bad_rate_takes_out_the_offers_in_its_currency_alone() {
        TestBook rates = TestBook.sound()
                .set("Offers", "H2", "USD")
                .sheet(
                        "Rates",
                        List.of("From", "To", "Rate", "Date"),
                        List.of("EUR", "USD", 1.1, "2026-11-19"),
                        List.of("EUR", "USD", "high", "2026-11-20"));
        Book book = rates.read().value();

        assertThat(book.offers()).extracting(Offer::item).containsExactly("Sunflower oil", "Jar");
        assertThat(book.gaps().of(Kind.NO_RATE, "Shea butter")).hasSize(1);
    }

    @Test
    void stock_and_demand_are_needed_by_orders_alone() {
        Gaps gaps = TestBook.sound()
                .sheet("Stock", List.of("Item", "Quantity", "Unit"), List.of("Shea butter", "some", "kg"))
                .sheet("Demand", List.of("Product", "Units", "Needed by"), List.of("Balm 30", "few", "2027-02-01"))
                .read()
                .value()
                .gaps();

        assertThat(gaps.gaps()).extracting(Gaps.Gap::kind).containsExactlyInAnyOrder(Kind.STOCK, Kind.DEMAND);
    }

    @Test
    void what_only_follows_from_an_unknown_currency_is_not_told() {
        List<String> findings = TestBook.sound()
                .drop("Suppliers")
                .set("Settings", "B2", "")
                .set("Offers", "H2", "")
                .set("Offers", "H3", "")
                .set("Offers", "H4", "")
                .findings();

        assertThat(findings).hasSize(3).allMatch(finding -> finding.contains("The currency of the price is unknown."));
    }
}
