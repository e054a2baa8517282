package perkilo.offers;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.units.Currencies;
import perkilo.units.Measure;

/** How rows become offers, and what is found not to fit in them. */
final class JoinedOfferTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 1);

    /** A row that knows its number. */
    private record Row(int number, Offer offer) implements QuotedRow {}

    private static Row row(
            int number, String size, Measure unit, @Nullable String from, String price, @Nullable Measure per) {
        return row(number, size, unit, from, price, per, LineTerms.NONE, new Validity(DAY, null));
    }

    private static Row row(
            int number,
            String size,
            Measure unit,
            @Nullable String from,
            String price,
            @Nullable Measure per,
            LineTerms terms,
            Validity validity) {
        Figure begins = from == null ? null : Figure.of(from);
        return new Row(
                number,
                new Offer(
                        "Fen",
                        "Wax",
                        Figure.of(size),
                        unit,
                        List.of(new Offer.PriceBreak(begins, Figure.of(price), per, Origin.NONE)),
                        Currencies.of("EUR"),
                        terms,
                        validity,
                        new Origin("list.csv", "", "line " + number)));
    }

    @Test
    void rows_of_one_pack_and_day_are_price_breaks_that_rise() {
        Row large = row(1, "25", Measure.KG, "100", "8", Measure.KG);
        Row small = row(2, "25.0", Measure.KG, null, "10", Measure.KG);

        JoinedOffer<Row> joined = JoinedOffer.of(List.of(large, small)).get(0);

        assertThat(joined.rows()).containsExactly(large, small);
        assertThat(joined.offer().breaks())
                .extracting(each -> each.price().value().toPlainString())
                .containsExactly("10", "8");
        assertThat(joined.offer().origin())
                .as("the first row's")
                .isEqualTo(large.offer().origin());
        assertThat(joined.conflicts()).isEmpty();
    }

    @Test
    void a_row_alone_is_the_offer() {
        Row row = row(1, "25", Measure.KG, null, "10", Measure.KG);

        assertThat(JoinedOffer.of(List.of(row)).get(0).offer()).isSameAs(row.offer());
    }

    @Test
    void other_days_and_other_units_of_the_pack_are_offers_of_their_own_beside_each_other() {
        Row first = row(1, "25", Measure.KG, null, "10", Measure.KG);
        Row other = row(2, "5", Measure.KG, null, "12", Measure.KG);
        Row grams = row(3, "25000", Measure.G, null, "10", Measure.KG);
        Row undated = row(4, "25", Measure.KG, null, "9", Measure.KG, LineTerms.NONE, new Validity(null, null));

        assertThat(JoinedOffer.of(List.of(first, other, grams, undated)))
                .extracting(joined -> joined.first().number())
                .as("pack by pack")
                .containsExactly(1, 3, 4, 2);
    }

    @Test
    void a_price_said_twice_and_a_second_price() {
        Row one = row(1, "25", Measure.KG, null, "10", Measure.KG);
        Row again = row(2, "25", Measure.KG, "0", "10.00", Measure.KG);
        Row other = row(3, "25", Measure.KG, null, "11", Measure.KG);

        JoinedOffer<Row> joined = JoinedOffer.of(List.of(one, again, other)).get(0);

        assertThat(joined.conflicts())
                .containsExactly(new Conflict.SamePrice<>(again, one), new Conflict.OtherPrice<>(other, one));
        assertThat(joined.offer().breaks()).hasSize(1);
    }

    /** 25 kg for 250 are 10 a kilogram; 5 a pound are 11.02 a kilogram. */
    @Test
    void a_larger_quantity_that_costs_more() {
        Row pack = row(1, "25", Measure.KG, null, "250", null);
        Row pounds = row(2, "25", Measure.KG, "100", "5", Measure.LB);
        Row cheaper = row(3, "25", Measure.KG, "500", "9", Measure.KG);

        assertThat(JoinedOffer.of(List.of(pack, pounds, cheaper)).get(0).conflicts())
                .containsExactly(new Conflict.Dearer<>(
                        pounds, pack, pounds.offer().breaks().get(0).fromQuantity()));
    }

    @Test
    void what_all_rows_have_to_say_alike() {
        Validity until = new Validity(DAY, LocalDate.of(2026, 12, 31));
        Validity sooner = new Validity(DAY, LocalDate.of(2026, 12, 1));
        Row blank = row(1, "25", Measure.KG, null, "10", Measure.KG);
        Row said = row(
                2,
                "25",
                Measure.KG,
                "100",
                "9",
                Measure.KG,
                LineTerms.of(Figure.of("50"), Figure.of("2"), Figure.of("0.065")),
                until);
        Row differs = row(
                3,
                "25",
                Measure.KG,
                "200",
                "8",
                Measure.KG,
                LineTerms.of(Figure.of("60"), Figure.of("2.0"), Figure.of("0.07")),
                sooner);

        JoinedOffer<Row> joined = JoinedOffer.of(List.of(blank, said, differs)).get(0);

        assertThat(joined.conflicts())
                .containsExactly(
                        new Conflict.Differs<>(Conflict.Field.MINIMUM_ORDER, differs, blank),
                        new Conflict.Differs<>(Conflict.Field.DUTY, differs, blank),
                        new Conflict.Differs<>(Conflict.Field.VALID_UNTIL, differs, blank));
        assertThat(joined.offer().terms()).isEqualTo(said.offer().terms());
        assertThat(joined.offer().validity()).isEqualTo(until);
    }
}
