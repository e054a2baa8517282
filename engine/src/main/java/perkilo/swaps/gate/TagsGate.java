package perkilo.swaps.gate;

import java.util.List;
import perkilo.names.Names;
import perkilo.swaps.trial.Trial;

/**
 * The gate that asks for every tag that the products require. A tag that is not stated counts as missing. Palm-free,
 * palm free and palmfree are one tag.
 */
final class TagsGate implements Gate {

    @Override
    public String name() {
        return "required tags";
    }

    @Override
    public Verdict judge(Trial trial) {
        if (trial.before().requiredTags().isEmpty()) {
            return Verdict.pass(this, GateMessages.noTagRequired());
        }
        List<String> own =
                trial.to().traits().tags().stream().map(TagsGate::letters).toList();
        List<String> missing = trial.before().requiredTags().stream()
                .filter(tag -> !own.contains(letters(tag)))
                .toList();
        return missing.isEmpty()
                ? Verdict.pass(
                        this, GateMessages.hasTags(List.copyOf(trial.before().requiredTags())))
                : Verdict.fail(this, GateMessages.lacksTags(trial.to().name(), missing));
    }

    private static String letters(String tag) {
        return Names.key(tag).replaceAll("[ -]", "");
    }
}
