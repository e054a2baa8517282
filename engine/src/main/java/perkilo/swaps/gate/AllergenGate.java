package perkilo.swaps.gate;

import java.util.ArrayList;
import java.util.List;
import perkilo.swaps.trial.Trial;

/** Shows which fragrance allergens the label would newly have to name, and which no longer; never keeps one out. */
final class AllergenGate implements Gate {

    @Override
    public String name() {
        return "allergens";
    }

    @Override
    public boolean dependsOnLevel() {
        return true;
    }

    @Override
    public Verdict judge(Trial trial) {
        List<String> before = trial.before().allergens().toBeNamed(trial.rinseOff());
        List<String> after = trial.after().allergens().toBeNamed(trial.rinseOff());
        List<String> entering =
                after.stream().filter(name -> !before.contains(name)).toList();
        List<String> leaving =
                before.stream().filter(name -> !after.contains(name)).toList();
        List<String> words = new ArrayList<>();
        List<String> cautions = new ArrayList<>();
        if (!entering.isEmpty()) {
            words.add("newly to be named: " + String.join(", ", entering));
            cautions.add("the label has to name " + String.join(", ", entering));
        }
        if (!leaving.isEmpty()) {
            words.add("no longer to be named: " + String.join(", ", leaving));
        }
        trial.to().traits().allergens().stream()
                .filter(allergen -> allergen.share() == null)
                .forEach(allergen -> cautions.add("how much %s is in %s is not known"
                        .formatted(allergen.name(), trial.to().name())));
        return new Verdict(this, true, words.isEmpty() ? "no change" : String.join("; ", words), cautions);
    }
}
