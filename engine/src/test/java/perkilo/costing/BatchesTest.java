package perkilo.costing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static perkilo.costing.Draft.batching;
import static perkilo.costing.Draft.d;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.model.Batching;

/** How much bulk is made, and in how many batches; all figures by hand. */
final class BatchesTest {

    /** 500 × 50.4 g with 4 % loss: 25.2 / 0.96 = 26.25 kg, and not 25.2 × 1.04 = 26.208 kg. */
    @Test
    void what_is_lost_in_filling_is_a_part_of_the_bulk() {
        Batches batches = Batches.forUnits(d("500"), d("0.0504"), d("0.04"), Batching.ANY);

        assertThat(batches.bulkToFill()).isEqualByComparingTo("26.25");
        assertThat(batches.count()).isEqualTo(1);
        assertThat(batches.charged()).isEqualByComparingTo("26.25");
        assertThat(batches.output()).isEqualByComparingTo("26.25");
        assertThat(batches.over()).isEqualByComparingTo("0");
    }

    /**
     * Bulk that fills its vessels exactly: 29.1 kg filled with 3 % loss are 30 kg, three vessels of 10 kg. In binary
     * fractions {@code 291 × 0.1 / (1 − 0.03) / 10} is 3.0000000000000004, which would be four.
     */
    @ParameterizedTest(name = "{0} units of {1} kg with {2} loss in vessels of {3} less {4}: {5}")
    @CsvSource({
        "291, 0.1, 0.03, 10, 0, 3",
        "388, 0.1, 0.03, 20, 0, 2",
        "582, 0.1, 0.03, 10, 0, 6",
        "1164, 0.1, 0.03, 10, 0, 12",
        "970, 0.1, 0.03, 100, 0, 1",
        "970, 0.1, 0.03, 50, 0, 2",
        "970, 0.1, 0.03, 51, 1, 2",
        "971, 0.1, 0.03, 100, 0, 2",
        "970, 0.1000001, 0.03, 100, 0, 2",
        "930, 0.1, 0.07, 25, 0, 4",
        "990, 0.1, 0.01, 10.5, 0.5, 10",
        "1, 0.05, 0, 100, 0, 1",
        // 99.999… kg: one vessel
        "969, 0.1, 0.03, 100, 0, 1"
    })
    void a_full_vessel_is_one_batch_and_a_gram_more_is_two(
            BigDecimal units, BigDecimal kg, BigDecimal loss, String max, String holdUp, long count) {
        assertThat(Batches.forUnits(units, kg, loss, batching(max, "0", holdUp)).count())
                .isEqualTo(count);
    }

    /** 1,000 × 0.05 kg = 50 kg in vessels of 22 kg that keep 2 kg: ⌈50 / 20⌉ = 3 batches of 50/3 + 2 kg. */
    @Test
    void what_stays_in_the_kettle_is_weighed_in_each_time() {
        Batches batches = Batches.forUnits(d("1000"), d("0.05"), d("0"), batching("22", "0", "2"));

        assertThat(batches.count()).isEqualTo(3);
        assertThat(batches.batchKg()).isCloseTo(d("18.66666666666666666667"), within(d("1e-20")));
        assertThat(batches.charged()).isEqualByComparingTo("56");
        assertThat(batches.output()).isEqualByComparingTo("50");
        assertThat(batches.over()).isEqualByComparingTo("0");
    }

    /** 20 kg in thirds: three times a rounded third is not 20 kg, and still nothing is left over. */
    @ParameterizedTest
    @CsvSource({"20, 8, 3", "50, 9, 6", "100, 15, 7", "10, 4, 3"})
    void nothing_is_left_over_where_the_minimum_does_not_bind(BigDecimal kg, String vessel, long count) {
        Batches units = Batches.forUnits(kg, BigDecimal.ONE, d("0"), batching(vessel, "1", "0"));
        Batches bulk = Batches.forBulk(kg, batching(vessel, "1", "0"));

        assertThat(units.count()).isEqualTo(count);
        assertThat(units.over().signum()).isZero();
        assertThat(units.charged()).isEqualByComparingTo(kg);
        assertThat(bulk.count()).isEqualTo(count);
        assertThat(bulk.over().signum()).isZero();
        assertThat(bulk.charged()).isEqualByComparingTo(kg);
    }

    /** 6 kg to fill, a vessel that cannot make less than 10 kg and keeps 1 kg: 10 weighed in, 9 out, 3 over. */
    @Test
    void the_vessel_s_minimum_makes_more_than_is_filled() {
        Batches batches = Batches.forUnits(d("100"), d("0.06"), d("0"), batching("50", "10", "1"));

        assertThat(batches.batchKg()).isEqualByComparingTo("10");
        assertThat(batches.charged()).isEqualByComparingTo("10");
        assertThat(batches.output()).isEqualByComparingTo("9");
        assertThat(batches.over()).isEqualByComparingTo("3");
    }

    /** 60 kg weighed in, in vessels of 25 kg that keep 0.5 kg: 3 of 20 kg, 58.5 kg out. */
    @Test
    void bulk_is_what_is_weighed_in() {
        Batches batches = Batches.forBulk(d("60"), batching("25", "0", "0.5"));

        assertThat(batches.count()).isEqualTo(3);
        assertThat(batches.batchKg()).isEqualByComparingTo("20");
        assertThat(batches.charged()).isEqualByComparingTo("60");
        assertThat(batches.output()).isEqualByComparingTo("58.5");
    }

    @Test
    void a_vessel_that_holds_only_its_hold_up_is_an_error() {
        assertThatThrownBy(() -> Batches.forUnits(d("1"), d("1"), d("0"), batching("2", "0", "2")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("A vessel of 2 kg holds no more than its hold-up of 2 kg.");
        assertThatThrownBy(() -> Batches.forBulk(d("1"), batching("2", "0", "2")))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void bulk_that_all_stays_in_the_kettle_is_an_error() {
        assertThatThrownBy(() -> Batches.forBulk(d("1"), batching(null, "0", "1")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("A batch of 1 kg leaves nothing beyond its hold-up of 1 kg.");
    }
}
