package perkilo.swaps.gate;

import java.math.BigDecimal;
import perkilo.origin.Figure;
import perkilo.swaps.facts.NaturalOrigin;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Recipe;
import perkilo.swaps.trial.Trial;

/**
 * The gate that keeps the formula's natural origin content (ISO 16128) at or above its target.
 *
 * <p>Materials whose index is not known count as zero. If that hides whether the target is met, the swap passes only if
 * it is known not to lower the content.
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
        String words = GateMessages.naturalOrigin(before.known(), before.unknown(), after.known(), after.unknown());
        BigDecimal target = trial.before().naturalOriginTarget();
        if (target == null) {
            return Verdict.pass(this, words);
        }
        String aim = words + " " + GateMessages.target(target);
        if (after.known().compareTo(target) >= 0) {
            return Verdict.pass(this, aim);
        }
        if (isKnownNotToFall(trial)) {
            return before.isComplete() || after.known().add(after.unknown()).compareTo(target) < 0
                    ? Verdict.passWithCaution(this, aim + " " + GateMessages.missedBefore())
                    : Verdict.pass(this, aim);
        }
        return Verdict.fail(this, after.isComplete() ? aim : aim + " " + GateMessages.cannotBeShown());
    }

    /** Whether the index of every line that changes is known, and the content does not fall. */
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
}
