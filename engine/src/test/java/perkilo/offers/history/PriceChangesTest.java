package perkilo.offers.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import perkilo.offers.AgeLimit;
import perkilo.offers.LineTerms;
import perkilo.offers.Offer;
import perkilo.offers.Validity;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.units.Currencies;
import perkilo.units.Measure;

/** What rose or fell since the last list, by hand. */
final class PriceChangesTest {

    private static final AgeLimit LIMIT = new AgeLimit(180);
    private static final LocalDate FIRST = LocalDate.of(2026, 9, 1);
    private static final LocalDate SECOND = LocalDate.of(2026, 10, 1);
    private static final LocalDate THIRD = LocalDate.of(2026, 11, 1);
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 20);

    /** A quote for 25 kg; a break is {@code from}, {@code price}, {@code from}, {@code price} … */
    private static Offer quote(
            String supplier, String item, LocalDate day, String currency, @Nullable Measure per, String... breaks) {
        List<Offer.PriceBreak> prices = new ArrayList<>();
        for (int at = 0; at < breaks.length; at += 2) {
            Figure from = breaks[at].equals("0") ? null : Figure.of(breaks[at]);
            prices.add(new Offer.PriceBreak(from, Figure.of(breaks[at + 1]), per, Origin.NONE));
        }
        return new Offer(
                supplier,
                item,
                Figure.of("25"),
                Measure.KG,
                prices,
                Currencies.of(currency),
                LineTerms.NONE,
                new Validity(day, null),
                new Origin(supplier + day + ".csv", "", ""));
    }

    /** A promotion at 8 has ended, and the list price of 10 counts again: a rise from 8 to 10. */
    @Test
    void after_a_promotion_the_price_rises_to_that_of_the_list() {
        Offer list = quote("Fen", "Wax", FIRST, "EUR", Measure.KG, "0", "10");
        Offer promotion =
                quote("Fen", "Wax", SECOND, "EUR", Measure.KG, "0", "8").until(SECOND.plusDays(5));

        PriceChanges changes = PriceChanges.on(SECOND.plusDays(6), List.of(list, promotion), "", LIMIT);

        assertThat(changes.all()).hasSize(1);
        assertThat(changes.all().get(0).fraction().orElseThrow()).isEqualByComparingTo("0.25");
    }

    @Test
    void the_newest_list_is_compared_with_what_was_quoted_before_it() {
        PriceChanges changes = PriceChanges.on(
                TODAY,
                List.of(
                        quote("Fen", "Wax", FIRST, "EUR", Measure.KG, "0", "9"),
                        quote("Fen", "Wax", SECOND, "EUR", Measure.KG, "0", "10"),
                        quote("Fen", "Wax", THIRD, "EUR", Measure.KG, "0", "11"),
                        quote("Fen", "Oil", FIRST, "EUR", Measure.KG, "0", "4"),
                        quote("Fen", "Oil", THIRD, "EUR", Measure.KG, "0", "3")),
                "",
                LIMIT);

        assertThat(changes.all()).hasSize(2);
        PriceChange oil = changes.all().get(0);
        assertThat(oil.kind()).isEqualTo(PriceChange.Kind.FELL);
        assertThat(oil.fraction().orElseThrow()).isEqualByComparingTo("-0.25");
        PriceChange wax = changes.all().get(1);
        assertThat(wax.kind()).isEqualTo(PriceChange.Kind.ROSE);
        assertThat(wax.fraction().orElseThrow()).isEqualByComparingTo("0.1");
        assertThat(changes.answer()).startsWith("1 price rose, 1 fell, 0 stayed the same");
    }

    @Test
    void a_list_of_the_future_does_not_count_yet() {
        List<Offer> quotes = List.of(
                quote("Fen", "Wax", FIRST, "EUR", Measure.KG, "0", "10"),
                quote("Fen", "Wax", SECOND, "EUR", Measure.KG, "0", "11"),
                quote("Fen", "Wax", THIRD, "EUR", Measure.KG, "0", "99"));

        assertThat(PriceChanges.on(SECOND, quotes, "", LIMIT)
                        .all()
                        .get(0)
                        .fraction()
                        .orElseThrow())
                .isEqualByComparingTo("0.1");
    }

    @Test
    void packs_come_and_go() {
        PriceChanges changes = PriceChanges.on(
                TODAY,
                List.of(
                        quote("Fen", "Gone", SECOND, "EUR", Measure.KG, "0", "1"),
                        quote("Fen", "Long gone", FIRST, "EUR", Measure.KG, "0", "1"),
                        quote("Fen", "New", THIRD, "EUR", Measure.KG, "0", "1"),
                        quote("Moor", "Alone", THIRD, "EUR", Measure.KG, "0", "1")),
                "",
                LIMIT);

        assertThat(changes.of(PriceChange.Kind.GONE))
                .extracting(change -> change.offer().item())
                .containsExactly("Gone");
        assertThat(changes.of(PriceChange.Kind.NEW))
                .extracting(change -> change.offer().item())
                .containsExactly("New");
        assertThat(changes.alone()).containsExactly("Moor");
    }

    @Test
    void the_first_list_is_compared_with_the_workbooks_own_offers() {
        Offer dated = inBook(quote("Fen", "Wax", FIRST, "EUR", Measure.KG, "0", "10"), FIRST);
        Offer undated = inBook(quote("Fen", "Oil", FIRST, "EUR", Measure.KG, "0", "4"), null);
        Offer kept = inBook(quote("Fen", "Clay", FIRST, "EUR", Measure.KG, "0", "7"), FIRST);
        PriceChanges changes = PriceChanges.on(
                TODAY,
                List.of(
                        dated,
                        undated,
                        kept,
                        quote("Fen", "Wax", THIRD, "EUR", Measure.KG, "0", "11"),
                        quote("Fen", "Oil", THIRD, "EUR", Measure.KG, "0", "3"),
                        quote("Fen", "New", THIRD, "EUR", Measure.KG, "0", "1"),
                        quote("Moor", "Alone", THIRD, "EUR", Measure.KG, "0", "1")),
                "book.xlsx",
                LIMIT);

        assertThat(changes.answer())
                .isEqualTo("1 price rose, 1 fell, 0 stayed the same; new: 1; no longer on the newest list: 0.");
        assertThat(changes.of(PriceChange.Kind.NEW))
                .extracting(change -> change.offer().item())
                .containsExactly("New");
        assertThat(changes.alone()).containsExactly("Moor");
    }

    private static Offer inBook(Offer quote, @Nullable LocalDate day) {
        return new Offer(
                quote.supplier(),
                quote.item(),
                quote.packSize(),
                quote.packUnit(),
                quote.breaks(),
                quote.currency(),
                LineTerms.NONE,
                new Validity(day, null),
                new Origin("book.xlsx", "Offers", "A2"));
    }

    @Test
    void breaks_that_moved_are_compared_at_every_quantity_of_either_list() {
        PriceChanges changes = PriceChanges.on(
                TODAY,
                List.of(
                        quote("Fen", "Wax", FIRST, "EUR", Measure.KG, "0", "10", "100", "8"),
                        quote("Fen", "Wax", SECOND, "EUR", Measure.KG, "0", "10", "200", "8")),
                "",
                LIMIT);

        assertThat(changes.of(PriceChange.Kind.ROSE)).singleElement().satisfies(change -> {
            assertThat(change.from()).isEqualByComparingTo("100");
            assertThat(change.fraction().orElseThrow()).isEqualByComparingTo("0.25");
        });
        assertThat(changes.of(PriceChange.Kind.SAME)).hasSize(2);
    }

    @Test
    void a_price_per_pack_is_compared_with_one_per_kilogram_and_one_per_pound() {
        PriceChanges perKg = PriceChanges.on(
                TODAY,
                List.of(
                        quote("Fen", "Wax", FIRST, "EUR", null, "0", "250"),
                        quote("Fen", "Wax", SECOND, "EUR", Measure.KG, "0", "10")),
                "",
                LIMIT);
        assertThat(perKg.all().get(0).kind()).isEqualTo(PriceChange.Kind.SAME);

        PriceChanges perPound = PriceChanges.on(
                TODAY,
                List.of(
                        quote("Fen", "Wax", FIRST, "EUR", Measure.LB, "0", "12.50"),
                        quote("Fen", "Wax", SECOND, "EUR", Measure.KG, "0", "27.557783")),
                "",
                LIMIT);
        assertThat(perPound.all().get(0).fraction().orElseThrow())
                .as("USD 12.50 per lb is 27.557783 per kg")
                .isCloseTo(BigDecimal.ZERO, Offset.offset(new BigDecimal("1e-7")));
    }

    @Test
    void another_currency_is_never_taken_for_a_change_of_price() {
        PriceChanges changes = PriceChanges.on(
                TODAY,
                List.of(
                        quote("Fen", "Wax", FIRST, "EUR", Measure.KG, "0", "10"),
                        quote("Fen", "Wax", SECOND, "USD", Measure.KG, "0", "12")),
                "",
                LIMIT);

        assertThat(changes.all()).singleElement().satisfies(change -> {
            assertThat(change.kind()).isEqualTo(PriceChange.Kind.NOT_COMPARABLE);
            assertThat(change.fraction()).isEmpty();
        });
    }
}
