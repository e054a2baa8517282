package perkilo.offers;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.units.Currencies;
import perkilo.units.Measure;

/**
 * Which prices can be ordered at on a day, by hand from the method page, section 6: of the quotes of one supplier for
 * one item and pack the newest counts, and hides the older ones also when it has expired; a pack that a newer list
 * names without a price is not bought at all. Announced prices: method page, section 8.
 */
final class OfferHistoryTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 20);

    /**
     * Quotes are written as {@code price@quoted..until}, with {@code -} for a price that a list lacks; a day that is
     * not known is left out. Days are of 2026, as in {@code 1130}.
     */
    @ParameterizedTest(name = "{0}: {1}, on {2} {3}")
    @CsvSource({
        // what                                        quotes                              day    prices
        "no dates,                                     10@..,                              1120,  10",
        "quoted today,                                 10@1120..,                          1120,  10",
        "quoted tomorrow,                              10@1121..,                          1120,  none",
        "its last day,                                 10@1101..1120,                      1120,  10",
        "ended yesterday,                              10@1101..1119,                      1120,  none",
        "ended and no date of quote,                   10@..1119,                          1120,  none",
        "the newest counts,                            10@0901.. 11@1001.. 12@1101..,      1120,  12",
        "in any order,                                 12@1101.. 10@0901.. 11@1001..,      1120,  12",
        "the newest hides the others when it expired,  10@0901..1231 12@1101..1119,        1120,  none",
        "one that never held hides the others too,     10@0901..1231 12@1101..1031,        1120,  none",
        "one without a date is the oldest,             9@.. 10@0901..,                     1120,  10",
        "one without a date in front of a later one,   9@.. 10@1201..,                     1120,  9",
        "two of one day,                               10@1101.. 11@1101..,                1120,  10 11",
        "a newer list without a price,                 10@1001.. -@1101,                   1120,  none",
        "a list of the same day without a price,       10@1101.. -@1101,                   1120,  none",
        "an older list without a price,                -@1001 10@1101..,                   1120,  10",
        "a price after a list without one,             9@0901.. -@1001 10@1101..,          1120,  10",
        "an announced list without a price,            10@1001.. -@1201,                   1120,  10",
        // later days, as seen from the 20th of November
        "until another day,                            10@1001..1210,                      1210,  10",
        "after its last day,                           10@1001..1210,                      1211,  none",
        "before an announced price,                    10@1001.. 12@1201..,                1130,  10",
        "from the day of an announced price,           10@1001.. 12@1201..,                1201,  12",
        "between an end and the next,                  10@1001..1125 12@1201..,            1130,  none",
        "an end after the next begins,                 10@1001..1231 12@1201..,            1205,  12",
        "two announced prices,                         10@1001.. 12@1201.. 13@1215..,      1214,  12",
        "the second of them,                           10@1001.. 12@1201.. 13@1215..,      1215,  13",
        "an announced price that ends,                 10@1001.. 12@1201..1210,            1211,  none",
        "announced and ended before it begins,         10@1001.. 12@1201..1130,            1205,  10",
        "until an announced list without a price,      10@1001.. -@1201,                   1130,  10",
        "from an announced list without a price,       10@1001.. -@1201,                   1201,  none",
        "a price follows the list without one,         10@1001.. -@1201 12@1215..,         1214,  none",
        "and holds from its day,                       10@1001.. -@1201 12@1215..,         1215,  12",
        "another price before the list without one,    10@1001.. 11@1125.. -@1201,         1128,  11",
        "which that list ends,                         10@1001.. 11@1125.. -@1201,         1201,  none",
        "withdrawn today and announced for later,      10@1001.. -@1101 12@1201..,         1201,  12"
    })
    void price(String what, String quotes, String day, String expected) {
        List<String> prices = history(quotes).orderableOn(day(day), "wax").stream()
                .map(offer -> offer.breaks().get(0).price().value().toPlainString())
                .toList();

        assertThat(prices).as(what).isEqualTo(expected.equals("none") ? List.of() : Arrays.asList(expected.split(" ")));
    }

    /** What is offered to the planner of orders: what can be ordered at today or later, up to a last day. */
    @ParameterizedTest(name = "{0} until {1}: {2}")
    @CsvSource({
        "10@1001.. 12@1201.. 13@1215..,  1120,  10",
        "10@1001.. 12@1201.. 13@1215..,  1201,  10 12",
        "10@1001.. 12@1201.. 13@1215..,  1231,  10 12 13",
        "10@1001..1119 12@1201..,        1231,  12",
        "10@1001.. 12@1201..1130,        1231,  10",
        "10@1001..,                      1101,  10"
    })
    void prices_of_a_horizon(String quotes, String last, String expected) {
        assertThat(history(quotes).orderableUntil(day(last)))
                .extracting(offer -> offer.breaks().get(0).price().value().toPlainString())
                .containsExactly(expected.split(" "));
    }

    @Test
    void packs_items_and_suppliers_do_not_hide_each_other() {
        Offer old = quote("Fen", "Wax", "25", Measure.KG, "10", "1001..");
        Offer others = quote("Moor", "Wax", "25", Measure.KG, "11", "1101..");
        Offer small = quote("Fen", "Wax", "5", Measure.KG, "12", "1101..");
        Offer oil = quote("Fen", "Oil", "25", Measure.KG, "13", "1101..");

        assertThat(new OfferHistory(List.of(old, others, small, oil), TODAY).orderableOn(TODAY, "Wax"))
                .containsExactly(old, others, small);
    }

    @Test
    void a_pack_is_the_same_in_another_spelling_or_unit() {
        Offer kilograms = quote("Fen", "Wax", "25", Measure.KG, "10", "1001..");
        Offer grams = quote("FEN", "wax", "25000", Measure.G, "11", "1101..");

        OfferHistory history = new OfferHistory(List.of(kilograms, grams), TODAY);

        assertThat(history.orderableOn(TODAY)).containsExactly(grams);
        assertThat(history.lifeOf(kilograms)).isEqualTo(new QuoteLife.Superseded(grams));
    }

    @Test
    void a_list_that_has_a_price_as_well_withdraws_nothing() {
        Offer priced = quote("Fen", "Wax", "25", Measure.KG, "10", "1101..");
        Unpriced same = new Unpriced(PackOffered.of(priced), day("1101"), priced.origin());

        assertThat(new OfferHistory(List.of(priced), List.of(same), TODAY).orderableOn(TODAY))
                .containsExactly(priced);
    }

    @Test
    void what_became_of_each_quote() {
        Offer old = quote("Fen", "Wax", "25", Measure.KG, "9", "0901..");
        Offer holds = quote("Fen", "Wax", "25", Measure.KG, "10", "1001..1231");
        Offer later = quote("Fen", "Wax", "25", Measure.KG, "12", "1201..");
        Offer never = quote("Fen", "Wax", "25", Measure.KG, "13", "1215..1210");
        Unpriced end = new Unpriced(PackOffered.of(old), day("1220"), new Origin("end.csv", "", ""));
        OfferHistory history = new OfferHistory(List.of(old, holds, later, never), List.of(end), TODAY);

        assertThat(history.lifeOf(old)).isEqualTo(new QuoteLife.Superseded(holds));
        assertThat(history.lifeOf(holds))
                .isEqualTo(new QuoteLife.Holds(new OrderDays(TODAY, day("1130"), day("1201"), null)));
        assertThat(history.lifeOf(later))
                .isEqualTo(new QuoteLife.Announced(new OrderDays(day("1201"), day("1219"), null, end), holds));
        assertThat(history.lifeOf(never)).isEqualTo(new QuoteLife.Never());
        assertThat(history.orderDays(never)).isNull();
    }

    /** The day before the costing date's newest quotes is what prices are compared with. */
    @Test
    void the_newest_quote_and_what_it_superseded() {
        Offer old = quote("Fen", "Wax", "25", Measure.KG, "9", "0901..");
        Offer before = quote("Fen", "Wax", "25", Measure.KG, "10", "1001..");
        Offer now = quote("Fen", "Wax", "25", Measure.KG, "11", "1101..1115");
        Offer later = quote("Fen", "Wax", "25", Measure.KG, "12", "1201..");

        PackHistory history = new PackHistory(List.of(later, old, now, before), List.of(), TODAY);

        assertThat(history.newest()).containsExactly(now);
        assertThat(history.superseded()).containsExactly(before);
        assertThat(new PackHistory(List.of(later), List.of(), TODAY).newest()).isEmpty();
        assertThat(new PackHistory(List.of(now), List.of(), TODAY).superseded()).isEmpty();
    }

    private static OfferHistory history(String quotes) {
        List<Offer> offers = new ArrayList<>();
        List<Unpriced> unpriced = new ArrayList<>();
        for (String quote : quotes.split(" ", -1)) {
            String[] parts = quote.split("@", -1);
            if (parts[0].equals("-")) {
                PackOffered pack = PackOffered.of("Fen", "Wax", Figure.of("25").value(), Measure.KG);
                unpriced.add(new Unpriced(pack, day(parts[1]), new Origin("unpriced.csv", "", "")));
            } else {
                offers.add(quote("Fen", "Wax", "25", Measure.KG, parts[0], parts[1]));
            }
        }
        return new OfferHistory(offers, unpriced, TODAY);
    }

    /** A quote of a list; {@code days} as in {@code 1101..1231}, either of which may be missing. */
    private static Offer quote(String supplier, String item, String size, Measure unit, String price, String days) {
        String[] both = days.split("\\.\\.", -1);
        Validity validity =
                new Validity(both[0].isEmpty() ? null : day(both[0]), both[1].isEmpty() ? null : day(both[1]));
        return new Offer(
                supplier,
                item,
                Figure.of(size),
                unit,
                List.of(new Offer.PriceBreak(null, Figure.of(price), null, Origin.NONE)),
                Currencies.of("EUR"),
                LineTerms.NONE,
                validity,
                new Origin(supplier + both[0] + ".csv", "", ""));
    }

    private static LocalDate day(String monthAndDay) {
        return LocalDate.of(
                2026, Integer.parseInt(monthAndDay.substring(0, 2)), Integer.parseInt(monthAndDay.substring(2)));
    }
}
