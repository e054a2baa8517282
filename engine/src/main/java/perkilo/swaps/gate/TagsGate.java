package perkilo.swaps.gate;

import java.util.List;
import perkilo.names.Names;
import perkilo.swaps.trial.Trial;

/**
 * It has every tag that the products require; a tag that nobody gave counts as missing. Palm-free, palm free and
 * palmfree are one tag.
 */
final class TagsGate implements Gate {

    @Override
    public String name() {
        return "required tags";
    }

    @Override
    public Verdict judge(Trial trial) {
        if (trial.before().requiredTags().isEmpty()) {
            return Verdict.pass(this, "none is required");
        }
        List<String> own =
                trial.to().traits().tags().stream().map(TagsGate::letters).toList();
        List<String> missing = trial.before().requiredTags().stream()
                .filter(tag -> !own.contains(letters(tag)))
                .toList();
        return missing.isEmpty()
                ? Verdict.pass(this, String.join(", ", trial.before().requiredTags()))
                : Verdict.fail(
                        this, "%s is not known to be %s".formatted(trial.to().name(), String.join(", ", missing)));
    }

    private static String letters(String tag) {
        return Names.key(tag).replaceAll("[ -]", "");
    }
}
