package perkilo.swaps.facts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Oils in the published orders of polarity, by two scales that don't always agree. */
final class PolarityTest {

    /** Interfacial tension against water, falling, from a list in the trade press: the higher, the less polar. */
    @Test
    void oils_by_interfacial_tension() {
        List<String> fromNonPolarToPolar = List.of(
                "Squalane",
                "Isohexadecane",
                "Paraffinum Liquidum",
                "Cetearyl Ethylhexanoate",
                "Isopropyl Palmitate",
                "Octyldodecanol",
                "Diethylhexyl Adipate",
                "Isopropyl Myristate",
                "Ethylhexyl Palmitate",
                "Isopropyl Stearate",
                "Caprylic/Capric Triglyceride",
                "Isopropyl Isostearate",
                "Simmondsia Chinensis Seed Oil",
                "Arachis Hypogaea Oil",
                "Prunus Amygdalus Dulcis Oil",
                "Helianthus Annuus Seed Oil",
                "Decyl Oleate",
                "Persea Gratissima Oil",
                "Olea Europaea Fruit Oil",
                "Ricinus Communis Seed Oil",
                "Triticum Vulgare Germ Oil");

        assertThat(fromNonPolarToPolar.stream()
                        .map(oil -> Polarity.of(oil).orElseThrow().interfacialTension()))
                .isSortedAccordingTo(Comparator.reverseOrder());
    }

    /** Solubility parameter, rising: J. Soc. Cosmet. Chem. 42 (1991) 375, Table I. */
    @Test
    void oils_by_solubility_parameter() {
        List<String> rising = List.of(
                "Decyl Oleate",
                "Paraffinum Liquidum",
                "Ethylhexyl Palmitate",
                "Isopropyl Palmitate",
                "Caprylic/Capric Triglyceride",
                "Ricinus Communis Seed Oil",
                "Octyldodecanol");

        assertThat(rising.stream().map(oil -> Polarity.of(oil).orElseThrow().solubilityParameter()))
                .isSorted();
    }

    /** Decyl oleate is the least polar of these by one scale and among the most polar by the other. */
    @Test
    void where_the_scales_disagree_the_farther_one_counts() {
        Polarity oleate = Polarity.of("Decyl Oleate").orElseThrow();
        Polarity octyldodecanol = Polarity.of("Octyldodecanol").orElseThrow();

        // 24.8 − 18.7 of 20 mN/m is 0.305; 8.92 − 6.92 of 1.5 is more than all
        assertThat(oleate.distance(octyldodecanol)).hasValue(1);
    }
}
