package perkilo.swaps.gate;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import perkilo.model.Material;
import perkilo.model.ProductKind.Word;
import perkilo.origin.Figure;
import perkilo.swaps.Kit;
import perkilo.swaps.Varied;
import perkilo.swaps.trial.Dosing;
import perkilo.swaps.trial.Recipe;
import perkilo.swaps.trial.Trial;

/** Whatever makes a gate stricter takes candidates away and adds none. */
final class StricterGatesTest {

    private static final Recipe CREAM = new Kit()
            .line("A", "75", "q.s.", Kit.catalogued("Water"))
            .line("A", "75", "4", Kit.catalogued("Glycerin"))
            .line("A", "75", "0.1", Kit.catalogued("Disodium EDTA"))
            .line("B", "75", "2", Kit.catalogued("Steareth-21"))
            .line("B", "75", "2", Kit.catalogued("Steareth-2"))
            .line("B", "75", "8", Kit.catalogued("Isopropyl palmitate"))
            .line("C", "40", "0.5", Kit.catalogued("Phenoxyethanol"))
            .kind(Word.LEAVE_ON, Word.HAIR)
            .ph("5.5")
            .recipe();

    private static Set<String> open(Recipe recipe, UnaryOperator<Material> known, boolean anyHlb) {
        Set<String> open = new TreeSet<>();
        for (int line : List.of(1, 3, 5, 6)) {
            for (Material material : Kit.catalogue()) {
                Trial trial = new Dosing(recipe).of(line, known.apply(material));
                if (passes(Gates.judge(trial, anyHlb))) {
                    open.add(line + " " + material.name());
                }
            }
        }
        return open;
    }

    private static boolean passes(List<Verdict> verdicts) {
        return verdicts.stream().allMatch(Verdict::ok);
    }

    @Test
    void stricter_facts_and_rules_add_no_candidate() {
        Set<String> usual = open(CREAM, one -> one, false);
        assertThat(usual).hasSizeGreaterThan(20);

        assertThat(open(CREAM, one -> one, true)).as("HLB opened").containsAll(usual);
        assertStricter(usual, CREAM, one -> Varied.trait(one, "legalMax", Figure.of("0.003")));
        assertStricter(usual, CREAM, one -> Varied.trait(one, "useMax", Figure.of("0.02")));
        assertStricter(usual, CREAM, one -> Varied.trait(one, "maxProcessC", Figure.of("50")));
        assertStricter(usual, CREAM, one -> Varied.trait(one, "phMax", Figure.of("5")));
        assertStricter(usual, Varied.of(CREAM, "requiredTags", Set.of("palm-free")), one -> one);
        assertThat(usual)
                .as("more of the law")
                .containsAll(open(Varied.of(CREAM, "day", LocalDate.of(2040, 1, 1)), one -> one, false));
    }

    private static void assertStricter(Set<String> usual, Recipe recipe, UnaryOperator<Material> known) {
        Set<String> stricter = open(recipe, known, false);
        assertThat(usual).containsAll(stricter);
        assertThat(stricter).hasSizeLessThan(usual.size());
    }
}
