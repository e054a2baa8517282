package perkilo.swaps.check;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import perkilo.origin.Finding;
import perkilo.swaps.facts.NaturalOrigin;
import perkilo.swaps.gate.Gates;
import perkilo.swaps.trial.Recipe;
import perkilo.swaps.trial.Trial;
import perkilo.swaps.trial.TrialWords;

/** What products promise: required tags and a natural origin content. Both have to be shown. */
final class ClaimCheck implements FormulaCheck {

    @Override
    public List<Finding> of(Checked formula) {
        List<Finding> findings = new ArrayList<>();
        tags(formula.recipe(), findings);
        naturalOrigin(formula.recipe(), findings);
        return findings;
    }

    private static void tags(Recipe recipe, List<Finding> findings) {
        Set<String> unshown = new LinkedHashSet<>();
        for (int line = 0; line < recipe.portions().size(); line++) {
            Trial unchanged = Trial.ofNothing(recipe, line);
            if (!Gates.judgeTags(unchanged).ok()) {
                unshown.add(unchanged.to().name());
            }
        }
        if (!unshown.isEmpty()) {
            findings.add(Finding.warning(
                    recipe.formula().origin(),
                    CheckMessages.tagsNotShown(
                            recipe.formula().name(), List.copyOf(recipe.requiredTags()), List.copyOf(unshown))));
        }
    }

    private static void naturalOrigin(Recipe recipe, List<Finding> findings) {
        BigDecimal target = recipe.naturalOriginTarget();
        NaturalOrigin content = recipe.naturalOrigin();
        if (target == null || content.known().compareTo(target) >= 0) {
            return;
        }
        String unknown = content.isComplete() ? "" : TrialWords.percent(content.unknown());
        findings.add(Finding.warning(
                recipe.formula().origin(),
                CheckMessages.naturalOriginMissed(
                        recipe.formula().name(),
                        TrialWords.percent(content.known()),
                        unknown,
                        TrialWords.percent(target))));
    }
}
