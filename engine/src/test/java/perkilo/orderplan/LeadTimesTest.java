package perkilo.orderplan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import perkilo.model.Book;
import perkilo.model.Supplier;
import perkilo.names.Names;
import perkilo.origin.Finding;
import perkilo.units.Measure;

/** Who is asked for his lead time: whoever could be ordered from, and nobody else. */
final class LeadTimesTest {

    @Test
    void only_suppliers_of_what_is_wanted_are_asked_each_once() {
        Book book = trade().offer("None", "Clay", "5", Measure.KG, "4")
                .offer("None", "Clay", "25", Measure.KG, "3")
                .offer("Other", "Chalk", "5", Measure.KG, "4")
                .offer("Lapsed", "Clay", "5", Measure.KG, null, 1, "2026-11-24", "0", "4")
                .demand("Mask", "10", "2027-01-15")
                .book();

        assertThat(LeadTimes.unknown(without(book)))
                .extracting(Finding::toString)
                .containsExactly(
                        "warning Offers!A4: None is not listed in Suppliers, so the lead time is unknown and orders are"
                                + " planned as if delivered on the day they are placed. Add a row for None with Lead time days.");
    }

    @Test
    void who_has_only_announced_his_price_is_asked_if_that_could_be_ordered() {
        Book book = trade().offer("Soon", "Clay", "5", Measure.KG, "4")
                .quoted("2027-01-01")
                .offer("Later", "Clay", "5", Measure.KG, "4")
                .quoted("2027-02-01")
                .demand("Mask", "10", "2027-01-15")
                .book();

        assertThat(LeadTimes.unknown(without(book)))
                .extracting(Finding::text)
                .singleElement()
                .asString()
                .startsWith("Soon is not listed in Suppliers");
    }

    @Test
    void who_says_that_he_delivers_at_once_is_not_asked() {
        Book book = trade().supplier("None", 0)
                .offer("None", "Clay", "5", Measure.KG, "4")
                .demand("Mask", "10", "2027-01-15")
                .book();

        assertThat(LeadTimes.unknown(book)).isEmpty();
    }

    /** All suppliers as if nothing were known of them but their names. */
    private static Book without(Book book) {
        Map<String, Supplier> suppliers = new LinkedHashMap<>();
        book.offers()
                .forEach(offer ->
                        suppliers.put(Names.key(offer.supplier()), Supplier.of(offer.supplier(), offer.currency())));
        return new Book(
                book.settings(),
                suppliers,
                book.offers(),
                book.materials(),
                book.formulas(),
                book.products(),
                List.of(),
                book.demand(),
                book.stock(),
                book.rates());
    }

    private static Trade trade() {
        return new Trade("2026-11-25").material("Clay", null, "0").product("Mask", List.of(), "Clay", "1");
    }
}
