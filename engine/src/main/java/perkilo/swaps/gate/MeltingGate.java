package perkilo.swaps.gate;

import java.math.BigDecimal;
import perkilo.origin.Figure;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.trial.Trial;

/** The gate that asks whether a material melts in the phase. */
final class MeltingGate implements Gate {

    private static final BigDecimal ROOM = new BigDecimal(25);

    @Override
    public String name() {
        return "melting";
    }

    @Override
    public boolean judgesPlace() {
        return true;
    }

    @Override
    public Verdict judge(Trial trial) {
        Figure melts = trial.to().traits().meltsAtC();
        Figure phase = trial.portion().line().phaseC();
        if (Functions.isSolid(trial.from()) && !Functions.isSolid(trial.to())) {
            return Verdict.passWithCaution(
                    this,
                    GateMessages.becomesSofter(trial.from().name(), trial.to().name()));
        }
        if (melts == null) {
            return Verdict.pass(this, GateMessages.noMeltingPoint());
        }
        if (phase != null) {
            return melts.value().compareTo(phase.value()) > 0
                    ? Verdict.fail(this, GateMessages.doesNotMelt(melts.value(), phase.value()))
                    : Verdict.pass(this, GateMessages.meltsInPhase(melts.value(), phase.value()));
        }
        return melts.value().compareTo(ROOM) > 0
                ? Verdict.passWithCaution(
                        this, GateMessages.maybeDoesNotMelt(trial.to().name(), melts.value()))
                : Verdict.pass(this, GateMessages.melts(melts.value()));
    }
}
