package perkilo.swaps.closeness;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import perkilo.model.Material;
import perkilo.swaps.Kit;
import perkilo.swaps.Varied;

/** What is not known never counts as equal. */
final class ClosenessProperties {

    private static final List<Material> CATALOGUE = Kit.catalogue();

    private static final List<String> TRAITS = List.of(
            "active",
            "solubleIn",
            "meltsAtC",
            "charge",
            "spreadingClass",
            "spreadingValue",
            "viscosity",
            "requiredHlb",
            "hlb",
            "useMax",
            "phMin");

    @Property(tries = 400)
    void an_unknown_trait_never_raises_closeness(
            @ForAll @IntRange(max = 337) int from,
            @ForAll @IntRange(max = 337) int to,
            @ForAll @IntRange(max = 10) int trait) {
        Material one = CATALOGUE.get(from);
        Material other = CATALOGUE.get(to);

        Closeness known = Closeness.of(one, other);

        assertThat(Closeness.of(one, without(other, trait)).score()).isLessThanOrEqualTo(known.score());
        assertThat(Closeness.of(without(one, trait), other).score()).isLessThanOrEqualTo(known.score());
    }

    private static Material without(Material material, int trait) {
        String name = TRAITS.get(trait);
        boolean text = Set.of("solubleIn", "charge", "spreadingClass").contains(name);
        return Varied.trait(material, name, text ? "" : null);
    }
}
