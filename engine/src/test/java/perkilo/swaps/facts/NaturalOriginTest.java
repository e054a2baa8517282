package perkilo.swaps.facts;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import perkilo.origin.Figure;

/** Natural origin content by ISO 16128: the sum of mass times index. */
final class NaturalOriginTest {

    /** A worked example that is published for consumers: jojoba oil, coco-glucoside, water, synthetic preservative. */
    @Test
    void a_facial_wash_is_of_natural_origin_by_93_per_cent() {
        NaturalOrigin content = NaturalOrigin.NOTHING
                .plus(Figure.of("0.50").value(), Figure.of("1.0"))
                .plus(Figure.of("0.25").value(), Figure.of("0.8"))
                .plus(Figure.of("0.23").value(), Figure.of("1.0"))
                .plus(Figure.of("0.02").value(), Figure.of("0"));

        assertThat(content.known()).isEqualByComparingTo("0.93");
        assertThat(content.isComplete()).isTrue();
    }

    /** ISO 16128-1 and -2: derived natural needs more than half of natural origin. 60 + 10 × 0.85 × 2 + 10 = 87. */
    @Test
    void an_index_of_half_or_less_counts_as_nothing() {
        NaturalOrigin content = NaturalOrigin.NOTHING
                .plus(Figure.of("0.60").value(), Figure.of("1"))
                .plus(Figure.of("0.20").value(), Figure.of("0.85"))
                .plus(Figure.of("0.10").value(), Figure.of("0.48"))
                .plus(Figure.of("0.10").value(), Figure.of("1"));

        assertThat(content.known()).isEqualByComparingTo("0.87");
    }

    @Test
    void what_is_not_known_is_kept_apart() {
        NaturalOrigin content = NaturalOrigin.NOTHING
                .plus(Figure.of("0.9").value(), Figure.of("1"))
                .plus(Figure.of("0.1").value(), null);

        assertThat(content.known()).isEqualByComparingTo("0.9");
        assertThat(content.unknown()).isEqualByComparingTo("0.1");
        assertThat(content.isComplete()).isFalse();
    }
}
