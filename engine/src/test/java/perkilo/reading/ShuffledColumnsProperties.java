package perkilo.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import perkilo.offers.Offer;

/** The order of columns carries no meaning. */
final class ShuffledColumnsProperties {

    private static final List<List<Object>> OFFERS = List.of(
            List.of(
                    "Supplier",
                    "Item",
                    "Pack size",
                    "Pack unit",
                    "From quantity",
                    "Price",
                    "Price per",
                    "Currency",
                    "MOQ"),
            List.of("Tarnholt Oleo", "Shea butter", 25, "kg", "", 6.5, "kg", "EUR", 50),
            List.of("Tarnholt Oleo", "Shea butter", 25, "kg", 100, "6,10 €", "kg", "EUR", 50),
            List.of("Tarnholt Oleo", "Sunflower oil", 20, "kg", "", 3.2, "kg", "EUR", ""),
            List.of("Jarrowglass", "Jar", 100, "each", "", 0.62, "each", "EUR", ""));

    @Property(tries = 15)
    void shuffled_columns_read_the_same(@ForAll long seed) {
        List<Integer> order = new ArrayList<>(List.of(0, 1, 2, 3, 4, 5, 6, 7, 8));
        Collections.shuffle(order, new Random(seed));
        List<?>[] rows = OFFERS.stream()
                .map(row -> order.stream().map(row::get).toList())
                .toArray(List[]::new);

        assertThat(summaries(TestBook.sound().sheet("Offers", rows)))
                .isEqualTo(summaries(TestBook.sound().sheet("Offers", OFFERS.toArray(List[]::new))));
    }

    private static List<String> summaries(TestBook book) {
        return book.read().value().offers().stream()
                .map(ShuffledColumnsProperties::summary)
                .toList();
    }

    private static String summary(Offer offer) {
        StringBuilder all = new StringBuilder(offer.supplier() + "|" + offer.item() + "|" + offer.pack());
        offer.breaks()
                .forEach(each -> all.append('|')
                        .append(each.fromQuantity())
                        .append('@')
                        .append(each.price().value().stripTrailingZeros())
                        .append(each.per()));
        return all.toString();
    }
}
