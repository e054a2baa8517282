package perkilo.swaps.gate;

import perkilo.origin.Figure;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.trial.Trial;

/** What replaces a preservative is known to preserve at its level; a challenge test is needed whatever the figures. */
final class PreservationGate implements Gate {

    private static final String CHALLENGE =
            "the preservative system changes: a preservative efficacy (challenge) test is needed before release";

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
        boolean preserves = Functions.work(trial.from()).equals(Functions.PRESERVATIVE);
        if (!preserves) {
            return Functions.does(trial.from(), "antimicrobial")
                    ? Verdict.passWithCaution(this, CHALLENGE)
                    : Verdict.pass(this, "not a preservative");
        }
        Figure least = trial.to().traits().useMin();
        if (least == null) {
            return Verdict.fail(
                    this,
                    "the lowest level at which %s preserves is not known"
                            .formatted(trial.to().name()));
        }
        return Verdict.passWithCaution(this, CHALLENGE);
    }
}
