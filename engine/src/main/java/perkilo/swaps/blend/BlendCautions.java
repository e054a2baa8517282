package perkilo.swaps.blend;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Recipe;
import perkilo.swaps.trial.Words;

/** What a person should look at in a blend. */
final class BlendCautions {

    private BlendCautions() {}

    static List<String> of(Recipe before, Recipe after, boolean proven) {
        List<String> cautions = new ArrayList<>();
        Optional<BigDecimal> old = before.requiredHlb().mean();
        Optional<BigDecimal> now = after.requiredHlb().mean();
        if (before.hasWater() && old.isPresent() && now.isPresent() && old.get().compareTo(now.get()) != 0) {
            cautions.add("the oils require HLB %s instead of %s, so far as known"
                    .formatted(Words.oneDecimal(now.get()), Words.oneDecimal(old.get())));
        }
        List<String> named =
                before.allergens().toBeNamed(before.formula().batching().rinseOff());
        after.allergens().toBeNamed(before.formula().batching().rinseOff()).stream()
                .filter(name -> !named.contains(name))
                .forEach(name -> cautions.add("the label has to name " + name));
        for (Portion portion : after.portions()) {
            if (portion.material().traits().spreadingClass().isBlank()
                    && before.levelOf(portion.material()).signum() == 0) {
                cautions.add("how %s spreads is not known"
                        .formatted(portion.material().name()));
            }
        }
        if (!proven) {
            cautions.add("the search was ended early: a cheaper blend within the bounds may exist");
        }
        return cautions;
    }
}
