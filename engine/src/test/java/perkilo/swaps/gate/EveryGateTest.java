package perkilo.swaps.gate;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import perkilo.model.Material;
import perkilo.swaps.Kit;
import perkilo.swaps.trial.Trial;

/** No gate is forgotten, and none is taken for another. */
final class EveryGateTest {

    @Test
    void each_gate_of_the_package_is_asked() {
        Set<String> asked =
                Gates.ALL.stream().map(gate -> gate.getClass().getName()).collect(Collectors.toSet());
        List<String> forgotten = new ArrayList<>();
        for (JavaClass one : new ClassFileImporter(List.of(new ImportOption.DoNotIncludeTests()))
                .importPackages("perkilo.swaps.gate")) {
            if (one.isAssignableTo(Gate.class) && !one.isInterface() && !asked.contains(one.getName())) {
                forgotten.add(one.getSimpleName() + " is a gate, but it is not in Gates.ALL, so it is never asked");
            }
        }
        assertThat(forgotten).isEmpty();
        assertThat(asked).hasSizeGreaterThan(10);
    }

    @Test
    void no_two_gates_have_one_name() {
        Map<String, Gate> byName = new HashMap<>();
        List<String> twice = new ArrayList<>();
        for (Gate gate : Gates.ALL) {
            Gate other = byName.put(gate.name(), gate);
            if (other != null) {
                twice.add("%s and %s are both called \"%s\", and a person could not tell which one is shut"
                        .formatted(
                                other.getClass().getSimpleName(),
                                gate.getClass().getSimpleName(),
                                gate.name()));
            }
        }
        assertThat(twice).isEmpty();
    }

    /** A gate that looks at a material where it already is has nothing to compare it with. */
    @Test
    void gates_of_places_and_levels_let_a_sound_formula_be() {
        Kit cream = new Kit()
                .line("A", "75", "q.s.", Kit.catalogued("Water"))
                .line("A", "75", "5", Kit.catalogued("Glycerin"))
                .ph("5.5");
        Material glycerin = Kit.catalogued("Glycerin");
        Trial same = cream.trial(1, glycerin);

        assertThat(Gates.judgePlace(same))
                .as("what gates that judge places say about glycerin in the place of glycerin")
                .hasSizeGreaterThan(3)
                .allMatch(Verdict::ok);
        assertThat(Gates.judgeLevel(same))
                .as("what gates that judge levels say about the same")
                .hasSize(2)
                .allMatch(Verdict::ok);
    }
}
