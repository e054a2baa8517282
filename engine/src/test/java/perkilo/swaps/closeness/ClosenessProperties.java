package perkilo.swaps.closeness;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.jspecify.annotations.Nullable;
import perkilo.model.Fact;
import perkilo.model.Material;
import perkilo.swaps.Kit;
import perkilo.swaps.Varied;
import perkilo.swaps.role.Role;
import perkilo.swaps.role.Roles;

/** What is not known never counts as equal: it lowers the worst and never lowers the best. */
final class ClosenessProperties {

    private static final List<Material> CATALOGUE = Kit.catalogue();

    private static final List<Fact> FACTS = List.of(Fact.values());

    /** Facts that no other fact and no table stands in for. */
    private static final Set<String> ALONE = Set.of(
            "ACTIVE",
            "CHARGE",
            "HLB",
            "VOLATILE",
            "SOLUBLE_IN",
            "EQUIVALENT_WEIGHT",
            "ELECTROLYTE_TOLERANCE",
            "CLARITY",
            "FOAM",
            "MILDNESS",
            "SPECTRUM",
            "HARDNESS",
            "PARTICLE_SIZE");

    @Property(tries = 2000)
    void an_unknown_fact_never_raises_the_worst_nor_lowers_the_best(
            @ForAll @IntRange(max = 10_000) int from,
            @ForAll @IntRange(max = 10_000) int to,
            @ForAll @IntRange(max = 36) int fact) {
        Material one = CATALOGUE.get(from % CATALOGUE.size());
        Material other = CATALOGUE.get(to % CATALOGUE.size());
        Fact forgotten = FACTS.get(fact % FACTS.size());
        // without a melting point a solid with a viscosity would count as liquid: that is another material
        Assume.that(forgotten != Fact.ROLE && forgotten != Fact.MELTS_AT_C);
        Role role = Roles.first(one).orElseThrow();

        Closeness known = Closeness.of(role, one, other);

        for (Closeness less : List.of(
                Closeness.of(role, one, without(other, forgotten)),
                Closeness.of(role, without(one, forgotten), other))) {
            assertThat(less.best()).isGreaterThanOrEqualTo(less.worst());
            if (less.unknown() > known.unknown()) {
                assertThat(less.worst()).isLessThanOrEqualTo(known.worst());
                assertThat(less.best()).isGreaterThanOrEqualTo(known.best());
            }
        }
    }

    @Property(tries = 1000)
    void a_material_that_lacks_a_deciding_fact_is_not_compared(
            @ForAll @IntRange(max = 10_000) int from, @ForAll @IntRange(max = 36) int which) {
        Material one = CATALOGUE.get(from % CATALOGUE.size());
        Role role = Roles.first(one).orElseThrow();
        List<Fact> deciding = role.facts().stream()
                .filter(fact -> fact.decides(false) && fact.oneOf().size() == 1)
                .map(fact -> fact.oneOf().get(0))
                .filter(ALONE::contains)
                .map(Fact::valueOf)
                .toList();
        Assume.that(!deciding.isEmpty());
        Fact forgotten = deciding.get(which % deciding.size());

        assertThat(Undecided.of(role, false, one, without(one, forgotten))).contains(forgotten.header());
        assertThat(Undecided.alone(role, false, without(one, forgotten))).contains(forgotten.header());
    }

    private static Material without(Material material, Fact fact) {
        @Nullable Object nothing = switch (fact.kind()) {
            case NUMBER, PERCENT -> null;
            case WORD -> "";
            case WORDS, SHARES -> List.of();
        };
        StringBuilder name = new StringBuilder();
        for (String part : fact.name().toLowerCase(Locale.ROOT).split("_", -1)) {
            name.append(name.length() == 0 ? part : Character.toUpperCase(part.charAt(0)) + part.substring(1));
        }
        return Varied.trait(material, name.toString(), nothing);
    }
}
