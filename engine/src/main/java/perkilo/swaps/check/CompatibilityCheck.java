package perkilo.swaps.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import perkilo.model.Material;
import perkilo.origin.Finding;
import perkilo.swaps.gate.Compatibility;
import perkilo.swaps.gate.Gates;

/** What does not go together. */
final class CompatibilityCheck implements FormulaCheck {

    @Override
    public List<Finding> of(Checked formula) {
        List<Finding> findings = new ArrayList<>();
        Set<Set<String>> told = new LinkedHashSet<>();
        List<Compatibility.Conflict> all = new ArrayList<>(Compatibility.conflicts(formula.recipe()));
        all.sort((one, other) -> Boolean.compare(other.isShut(), one.isShut()));
        for (Compatibility.Conflict conflict : all) {
            Set<String> names = new LinkedHashSet<>();
            conflict.a().stream().map(Material::name).forEach(names::add);
            conflict.b().stream().map(Material::name).forEach(names::add);
            if (told.stream().anyMatch(earlier -> earlier.containsAll(names))) {
                continue;
            }
            told.add(names);
            String first = conflict.a().get(0).name();
            String text =
                    CheckMessages.about(first, formula.name(), Gates.COMPATIBILITY.name()) + " " + conflict.words();
            findings.add(
                    conflict.isShut()
                            ? Finding.warning(formula.origin(first), text)
                            : Finding.note(formula.origin(first), text));
        }
        return findings;
    }
}
