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
 * one item and pack, the newest counts that has begun and has not ended; a pack that a newer list names without a price
 * is not bought at all. Announced prices: method page, section 8.
 */
final class OfferHistoryTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 20);
    private static final AgeLimit LIMIT = new AgeLimit(90);

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
        "the list price after a promotion,             10@0901..1231 12@1101..1119,        1120,  10",
        "the same without an end,                      10@0901.. 12@1101..1119,            1120,  10",
        "on the last day of the promotion,             10@0901..1231 12@1101..1120,        1120,  12",
        "one that never held hides none,               10@0901..1231 12@1101..1031,        1120,  10",
        "both have ended,                              10@0901..1031 12@1101..1119,        1120,  none",
        "a promotion within a promotion,               10@0901.. 9@1001..1231 8@1101..1119,  1120,  9",
        "a longer one before a shorter one,            10@0901.. 9@1001..1115 8@1101..1110,  1120,  10",
        "90 days old on the day,                       10@0822.. 12@1101..1119,            1120,  10",
        "91 days old on the day,                       10@0821.. 12@1101..1119,            1120,  none",
        "91 days old and none has followed,            10@0821..,                          1120,  10",
        "91 days old and one follows later,            10@0821.. 12@1201..,                1120,  10",
        "91 days old with an end of its own,           10@0821..1231 12@1101..1119,        1120,  10",
        "no date and one followed,                     10@.. 12@1101..1119,                1120,  none",
        "no date but an end,                           10@..1231 12@1101..1119,            1120,  10",
        "withdrawn between,                            10@0901..1231 -@1001 12@1101..1119, 1120,  none",
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
        "during an announced promotion,                10@1001.. 12@1201..1210,            1210,  12",
        "after an announced promotion,                 10@1001.. 12@1201..1210,            1211,  10",
        "and after the age limit of the list,          10@0915.. 12@1201..1210,            1215,  none",
        "after the promotion of today,                 10@1001.. 12@1101..1125,            1126,  10",
        "not after a list without a price,             10@1001.. 12@1101..1125 -@1124,     1126,  none",
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
        "10@1001.. 12@1101..1130,        1130,  12",
        "10@1001.. 12@1101..1130,        1201,  10 12",
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

        assertThat(new OfferHistory(List.of(old, others, small, oil), TODAY, LIMIT).orderableOn(TODAY, "Wax"))
                .containsExactly(old, others, small);
    }

    @Test
    void a_pack_is_the_same_in_another_spelling_or_unit() {
        Offer kilograms = quote("Fen", "Wax", "25", Measure.KG, "10", "1001..");
        Offer grams = quote("FEN", "wax", "25000", Measure.G, "11", "1101..");

        OfferHistory history = new OfferHistory(List.of(kilograms, grams), TODAY, LIMIT);

        assertThat(history.orderableOn(TODAY)).containsExactly(grams);
        assertThat(history.lifeOf(kilograms)).isEqualTo(new QuoteLife.Superseded(grams, true, List.of()));
    }

    @Test
    void a_list_that_has_a_price_as_well_withdraws_nothing() {
        Offer priced = quote("Fen", "Wax", "25", Measure.KG, "10", "1101..");
        Unpriced same = new Unpriced(PackOffered.of(priced), day("1101"), priced.origin());

        assertThat(new OfferHistory(List.of(priced), List.of(same), TODAY, LIMIT).orderableOn(TODAY))
                .containsExactly(priced);
    }

    @Test
    void what_became_of_each_quote() {
        Offer old = quote("Fen", "Wax", "25", Measure.KG, "9", "0901..");
        Offer holds = quote("Fen", "Wax", "25", Measure.KG, "10", "1001..1231");
        Offer later = quote("Fen", "Wax", "25", Measure.KG, "12", "1201..");
        Offer never = quote("Fen", "Wax", "25", Measure.KG, "13", "1215..1210");
        Unpriced end = new Unpriced(PackOffered.of(old), day("1220"), new Origin("end.csv", "", ""));
        OfferHistory history = new OfferHistory(List.of(old, holds, later, never), List.of(end), TODAY, LIMIT);

        assertThat(history.lifeOf(old)).isEqualTo(new QuoteLife.Superseded(holds, true, List.of()));
        assertThat(history.lifeOf(holds))
                .isEqualTo(new QuoteLife.Holds(List.of(new OrderDays(TODAY, day("1130"), day("1201"), null, null))));
        assertThat(history.lifeOf(later))
                .isEqualTo(new QuoteLife.Announced(
                        List.of(new OrderDays(day("1201"), day("1219"), null, end, null)), holds));
        assertThat(history.lifeOf(never)).isEqualTo(new QuoteLife.Never());
        assertThat(history.orderDays(never)).isEmpty();
    }

    /** A list, a promotion that has ended, one of today and one to come: the list is in between and after them. */
    @Test
    void a_list_price_has_several_stretches_of_days() {
        Offer list = quote("Fen", "Wax", "25", Measure.KG, "10", "1001..1231");
        Offer past = quote("Fen", "Wax", "25", Measure.KG, "9", "1101..1110");
        Offer runs = quote("Fen", "Wax", "25", Measure.KG, "8", "1115..1125");
        Offer later = quote("Fen", "Wax", "25", Measure.KG, "7", "1201..1210");
        OfferHistory history = new OfferHistory(List.of(list, past, runs, later), TODAY, LIMIT);

        List<OrderDays> ofList = List.of(
                new OrderDays(day("1126"), day("1130"), day("1201"), null, new OrderDays.After(runs, day("1125"))),
                new OrderDays(day("1211"), day("1231"), null, null, new OrderDays.After(later, day("1210"))));
        assertThat(history.orderDays(list)).isEqualTo(ofList);
        assertThat(history.lifeOf(list)).isEqualTo(new QuoteLife.Superseded(runs, true, ofList));
        assertThat(history.orderDays(past)).isEmpty();
        assertThat(history.orderDays(runs)).containsExactly(new OrderDays(TODAY, day("1125"), day("1126"), null, null));
        assertThat(history.orderDays(later))
                .containsExactly(new OrderDays(day("1201"), day("1210"), day("1211"), null, null));
    }

    @Test
    void a_promotion_that_ended_leaves_the_list_price() {
        Offer list = quote("Fen", "Wax", "25", Measure.KG, "10", "1001..");
        Offer ended = quote("Fen", "Wax", "25", Measure.KG, "9", "1101..1110");
        OfferHistory history = new OfferHistory(List.of(list, ended), TODAY, LIMIT);

        // 90 days from the 1st of October
        OrderDays again = new OrderDays(TODAY, day("1230"), null, null, new OrderDays.After(ended, day("1110")));
        assertThat(history.lifeOf(list)).isEqualTo(new QuoteLife.Holds(List.of(again)));
        assertThat(history.lifeOf(ended)).isEqualTo(new QuoteLife.Expired(list));
        assertThat(new OfferHistory(List.of(ended), TODAY, LIMIT).lifeOf(ended)).isEqualTo(new QuoteLife.Expired(null));
    }

    /** The quotes that counted last before those of today are what prices are compared with. */
    @Test
    void the_quote_that_counts_and_the_one_before() {
        Offer old = quote("Fen", "Wax", "25", Measure.KG, "9", "0901..");
        Offer before = quote("Fen", "Wax", "25", Measure.KG, "10", "1001..");
        Offer now = quote("Fen", "Wax", "25", Measure.KG, "11", "1101..1115");
        Offer later = quote("Fen", "Wax", "25", Measure.KG, "12", "1201..");

        PackHistory during = new PackHistory(List.of(later, old, now, before), List.of(), day("1110"), LIMIT);
        PackHistory after = new PackHistory(List.of(later, old, now, before), List.of(), TODAY, LIMIT);

        assertThat(during.now()).containsExactly(now);
        assertThat(during.before()).containsExactly(before);
        assertThat(after.now()).containsExactly(before);
        assertThat(after.before()).containsExactly(now);
        assertThat(new PackHistory(List.of(later), List.of(), TODAY, LIMIT).now())
                .isEmpty();
        assertThat(new PackHistory(List.of(now), List.of(), TODAY, LIMIT).now()).containsExactly(now);
        assertThat(new PackHistory(List.of(now), List.of(), TODAY, LIMIT).before())
                .isEmpty();
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
        return new OfferHistory(offers, unpriced, TODAY, LIMIT);
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
