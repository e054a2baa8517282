package perkilo.swaps.gate;

import java.util.ArrayList;
import java.util.List;
import perkilo.swaps.trial.Trial;

/** The gate that shows which fragrance allergens enter and leave the label; it never keeps a material out. */
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
            words.add(GateMessages.allergensEnter(entering));
            cautions.add(GateMessages.labelHasToName(entering));
        }
        if (!leaving.isEmpty()) {
            words.add(GateMessages.allergensLeave(leaving));
        }
        trial.to().traits().allergens().stream()
                .filter(allergen -> allergen.share() == null)
                .forEach(allergen -> cautions.add(GateMessages.allergenShareUnknown(
                        allergen.name(), trial.to().name())));
        return new Verdict(this, true, words.isEmpty() ? GateMessages.noChange() : String.join(" ", words), cautions);
    }
}
