package perkilo.swaps.closeness;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import perkilo.model.Material;
import perkilo.model.Traits;
import perkilo.swaps.Kit;

/** What is not known never counts as equal. */
final class ClosenessProperties {

    private static final List<Material> CATALOGUE = Kit.catalogue();

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
        Traits t = material.traits();
        Traits less = new Traits(
                trait == 0 ? null : t.active(),
                trait == 1 ? "" : t.solubleIn(),
                t.maxProcessC(),
                trait == 2 ? null : t.meltsAtC(),
                trait == 3 ? "" : t.charge(),
                trait == 4 ? "" : t.spreadingClass(),
                trait == 5 ? null : t.spreadingValue(),
                trait == 6 ? null : t.viscosity(),
                trait == 7 ? null : t.requiredHlb(),
                trait == 8 ? null : t.hlb(),
                t.useMin(),
                trait == 9 ? null : t.useMax(),
                t.legalMax(),
                trait == 10 ? null : t.phMin(),
                t.phMax(),
                t.naturalOriginIndex(),
                t.tags(),
                t.allergens());
        return new Material(
                material.name(),
                material.inci(),
                material.functions(),
                material.density(),
                material.housePrice(),
                material.handlingLoss(),
                material.shelfLifeMonths(),
                less,
                material.origin());
    }
}
