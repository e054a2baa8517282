package perkilo.swaps.gate;

import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.model.Traits;
import perkilo.origin.Figure;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.facts.Spectrum;
import perkilo.swaps.role.Role;
import perkilo.swaps.role.Roles;
import perkilo.swaps.trial.Trial;

/**
 * The gate for what replaces a preservative: it has to protect against everything that the other protects against, in
 * the same pH range, and the lowest level at which it does has to be known. A challenge test is needed whatever the
 * figures say.
 */
final class PreservationGate implements Gate {

    @Override
    public String name() {
        return "preservation";
    }

    @Override
    public boolean dependsOnLevel() {
        return true;
    }

    @Override
    public Verdict judge(Trial trial) {
        Role role = trial.role();
        if (role == null || !Roles.isPreserving(role)) {
            return Roles.preserves(trial.from()) || Functions.does(trial.from(), "antimicrobial")
                    ? Verdict.passWithCaution(this, GateMessages.challengeTestNeeded())
                    : Verdict.pass(this, GateMessages.noPreservative());
        }
        String from = trial.from().name();
        String to = trial.to().name();
        if (trial.to().traits().useMin() == null) {
            return Verdict.fail(this, GateMessages.preservingLevelUnknown(to));
        }
        List<String> lost = Spectrum.lost(Spectrum.of(trial.from()), Spectrum.of(trial.to()));
        if (!lost.isEmpty() && !Spectrum.of(trial.to()).isEmpty()) {
            return Verdict.fail(this, GateMessages.onlyAsSystem(to, from, lost));
        }
        if (trial.before().formula().batching().finalPh() == null && isNarrower(trial)) {
            return Verdict.fail(this, GateMessages.otherPreservingPh(to, from));
        }
        return Verdict.passWithCaution(this, GateMessages.challengeTestNeeded());
    }

    /** Whether both pH ranges are known, and the new one does not hold all of the old. */
    private static boolean isNarrower(Trial trial) {
        Traits old = trial.from().traits();
        Traits now = trial.to().traits();
        return isAbove(now.phMin(), old.phMin()) || isAbove(old.phMax(), now.phMax());
    }

    private static boolean isAbove(@Nullable Figure one, @Nullable Figure other) {
        return one != null && other != null && one.value().compareTo(other.value()) > 0;
    }
}
