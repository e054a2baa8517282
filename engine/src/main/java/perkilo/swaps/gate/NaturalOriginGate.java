package perkilo.swaps.gate;

import java.math.BigDecimal;
import perkilo.origin.Figure;
import perkilo.swaps.facts.NaturalOrigin;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Recipe;
import perkilo.swaps.trial.Trial;
import perkilo.swaps.trial.Words;

/**
 * The formula's natural origin content (ISO 16128) stays at or above its target.
 *
 * <p>Materials whose index is not known count for nothing. Where that hides whether the target is met, the swap passes
 * only if it is known not to lower the content.
 */
final class NaturalOriginGate implements Gate {

    @Override
    public String name() {
        return "natural origin";
    }

    @Override
    public boolean dependsOnLevel() {
        return true;
    }

    @Override
    public Verdict judge(Trial trial) {
        NaturalOrigin before = trial.before().naturalOrigin();
        NaturalOrigin after = trial.after().naturalOrigin();
        String words = "%s before, %s after".formatted(describe(before), describe(after));
        BigDecimal target = trial.before().naturalOriginTarget();
        if (target == null) {
            return Verdict.pass(this, words);
        }
        String aim = "%s, the target is %s".formatted(words, Words.percent(target));
        if (after.known().compareTo(target) >= 0) {
            return Verdict.pass(this, aim);
        }
        if (isKnownNotToFall(trial)) {
            return before.isComplete() || after.known().add(after.unknown()).compareTo(target) < 0
                    ? Verdict.passWithCaution(this, aim + ": missed before as well")
                    : Verdict.pass(this, aim);
        }
        return Verdict.fail(
                this, after.isComplete() ? aim : aim + ": it can't be shown to be kept while an index is not known");
    }

    /** Whether the lines that change are all known, and bring no less than before. */
    private static boolean isKnownNotToFall(Trial trial) {
        Recipe before = trial.before();
        Recipe after = trial.after();
        BigDecimal change = BigDecimal.ZERO;
        for (int line = 0; line < before.portions().size(); line++) {
            Portion old = before.portions().get(line);
            Portion now = after.portions().get(line);
            if (old.material().equals(now.material()) && old.level().compareTo(now.level()) == 0) {
                continue;
            }
            Figure oldIndex = old.material().traits().naturalOriginIndex();
            Figure newIndex = now.material().traits().naturalOriginIndex();
            if (oldIndex == null || newIndex == null) {
                return false;
            }
            change = change.add(now.level().multiply(NaturalOrigin.counted(newIndex.value())))
                    .subtract(old.level().multiply(NaturalOrigin.counted(oldIndex.value())));
        }
        return change.signum() >= 0;
    }

    private static String describe(NaturalOrigin content) {
        return content.isComplete()
                ? Words.percent(content.known())
                : "%s (not known of %s)".formatted(Words.percent(content.known()), Words.percent(content.unknown()));
    }
}
