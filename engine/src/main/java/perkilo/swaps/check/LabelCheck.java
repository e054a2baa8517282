package perkilo.swaps.check;

import java.util.ArrayList;
import java.util.List;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.swaps.trial.Portion;

/** What the label needs: INCI names, and the fragrance allergens that have to be named. */
final class LabelCheck implements FormulaCheck {

    @Override
    public List<Finding> of(Checked formula) {
        List<Finding> findings = new ArrayList<>();
        Origin origin = formula.recipe().formula().origin();
        List<String> nameless = formula.materials().stream()
                .map(Portion::material)
                .filter(material -> material.inci().isBlank() && !material.isWater() && !material.isNameAlone())
                .map(material -> material.name())
                .toList();
        if (!nameless.isEmpty()) {
            findings.add(Finding.note(origin, CheckMessages.noInci(formula.name(), nameless)));
        }
        List<String> allergens =
                formula.recipe().allergens().toBeNamed(formula.recipe().kind().rinseOff());
        if (!allergens.isEmpty()) {
            findings.add(Finding.note(
                    origin,
                    CheckMessages.allergens(
                            formula.name(), allergens, formula.recipe().kind().rinseOff())));
        }
        return findings;
    }
}
