package perkilo.swaps.gate;

import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import perkilo.model.Material;
import perkilo.model.Traits;
import perkilo.origin.Figure;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.facts.Spectrum;
import perkilo.swaps.role.Role;
import perkilo.swaps.role.Roles;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Trial;

/**
 * The gate for what replaces a preservative: where several preserve, only a whole system can take their place, so none
 * is replaced alone. A single one is replaced by what protects against everything that it protects against, in the same
 * pH range, where the lowest level at which the other does so is known. A challenge test is needed whatever the figures
 * say.
 */
final class PreservationGate implements Gate {

    /** Their label warns of formaldehyde, and people react to it: only another such one takes their place. */
    private static final String FORMALDEHYDE_DONOR = "formaldehyde donor";

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
        if (Preserved.needs(trial.after()) && Preserved.is(trial.before()) && !Preserved.is(trial.after())) {
            return Verdict.fail(this, GateMessages.nothingPreserves());
        }
        if (role == null || !Roles.isPreserving(role)) {
            return Roles.preserves(trial.from()) || Functions.does(trial.from(), "antimicrobial")
                    ? Verdict.passWithCaution(this, GateMessages.challengeTestNeeded())
                    : Verdict.pass(this, GateMessages.noPreservative());
        }
        String from = trial.from().name();
        String to = trial.to().name();
        List<String> others = others(trial);
        if (!others.isEmpty()) {
            return Verdict.fail(this, GateMessages.oneOfSeveral(from, others));
        }
        if (releasesFormaldehyde(trial.to()) && !releasesFormaldehyde(trial.from())) {
            return Verdict.fail(this, GateMessages.releasesFormaldehyde(to, from));
        }
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

    private static boolean releasesFormaldehyde(Material material) {
        return MaterialClass.of(material).contains(FORMALDEHYDE_DONOR);
    }

    /** What preserves beside the line that is replaced: together they are the system that was tested. */
    private static List<String> others(Trial trial) {
        List<Portion> portions = trial.before().portions();
        return IntStream.range(0, portions.size())
                .filter(line ->
                        line != trial.line() && portions.get(line).level().signum() > 0)
                .mapToObj(line -> portions.get(line).material())
                .filter(Roles::preserves)
                .map(Material::name)
                .distinct()
                .toList();
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
