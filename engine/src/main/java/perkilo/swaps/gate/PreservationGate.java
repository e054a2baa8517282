package perkilo.swaps.gate;

import perkilo.origin.Figure;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.trial.Trial;

/**
 * The gate for what replaces a preservative: the lowest level at which it preserves has to be known. A challenge test
 * is needed whatever the figures say.
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
        boolean preserves = Functions.work(trial.from()).equals(Functions.PRESERVATIVE);
        if (!preserves) {
            return Functions.does(trial.from(), "antimicrobial")
                    ? Verdict.passWithCaution(this, GateMessages.challengeTestNeeded())
                    : Verdict.pass(this, GateMessages.noPreservative());
        }
        Figure least = trial.to().traits().useMin();
        if (least == null) {
            return Verdict.fail(
                    this, GateMessages.preservingLevelUnknown(trial.to().name()));
        }
        return Verdict.passWithCaution(this, GateMessages.challengeTestNeeded());
    }
}
