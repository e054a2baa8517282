package perkilo.swaps.check;

import java.util.ArrayList;
import java.util.List;
import perkilo.model.Material;
import perkilo.origin.Figure;
import perkilo.origin.Finding;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.gate.Gates;
import perkilo.swaps.gate.Verdict;
import perkilo.swaps.role.Roles;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Trial;

/** Levels above the usual range; below it only of what preserves, because too little of anything else does no harm. */
final class LevelCheck implements FormulaCheck {

    @Override
    public List<Finding> of(Checked formula) {
        List<Finding> findings = new ArrayList<>();
        for (Portion portion : formula.materials()) {
            Material material = portion.material();
            if (material.isWater()
                    || isSetByPh(material, formula)
                    || formula.isUnlawful(material)
                    || isAboveTypedMaximum(material, formula)) {
                continue;
            }
            int line = formula.recipe().portions().indexOf(portion);
            Verdict verdict = Gates.USE_RANGE.judge(Trial.ofNothing(formula.recipe(), line));
            if (!verdict.ok() && (isAbove(material, formula) || preserves(material))) {
                String about = CheckMessages.about(
                        material.name(), formula.name(), verdict.gate().name());
                findings.add(Finding.warning(portion.line().origin(), about + ' ' + verdict.why()));
            }
        }
        return findings;
    }

    /** So much acid or base is used as the final pH asks for. */
    private static boolean isSetByPh(Material material, Checked formula) {
        return formula.recipe().formula().batching().finalPh() != null
                && Roles.first(material)
                        .filter(role -> role.isOneOf("acid", "base", "buffer salt"))
                        .isPresent();
    }

    private static boolean isAboveTypedMaximum(Material material, Checked formula) {
        Figure typed = material.traits().legalMax();
        return typed != null && formula.recipe().levelOf(material).compareTo(typed.value()) > 0;
    }

    private static boolean isAbove(Material material, Checked formula) {
        Figure max = material.traits().useMax();
        return max != null && formula.recipe().levelOf(material).compareTo(max.value()) > 0;
    }

    private static boolean preserves(Material material) {
        return Roles.first(material)
                .map(Roles::isPreserving)
                .orElseGet(() -> Functions.work(material).equals(Functions.PRESERVATIVE));
    }
}
