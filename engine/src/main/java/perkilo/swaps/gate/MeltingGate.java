package perkilo.swaps.gate;

import java.math.BigDecimal;
import perkilo.origin.Figure;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.trial.Trial;
import perkilo.swaps.trial.Words;

/** It melts in the phase. */
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
                    "%s is solid at room temperature, %s is not known to be: the product becomes softer"
                            .formatted(trial.from().name(), trial.to().name()));
        }
        if (melts == null) {
            return Verdict.pass(this, "no melting point is stated: taken as liquid or soluble");
        }
        String at = "melts at %s °C".formatted(Words.plain(melts.value()));
        if (phase != null) {
            String degrees = "the phase is at %s °C".formatted(Words.plain(phase.value()));
            return melts.value().compareTo(phase.value()) > 0
                    ? Verdict.fail(this, "%s, but %s".formatted(at, degrees))
                    : Verdict.pass(this, "%s, %s".formatted(at, degrees));
        }
        return melts.value().compareTo(ROOM) > 0
                ? Verdict.passWithCaution(
                        this,
                        "%s %s, and the phase's temperature is not known"
                                .formatted(trial.to().name(), at))
                : Verdict.pass(this, at);
    }
}
