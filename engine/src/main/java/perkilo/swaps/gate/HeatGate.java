package perkilo.swaps.gate;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.swaps.trial.Trial;
import perkilo.swaps.trial.Words;

/** It withstands the temperature of the phase. */
final class HeatGate implements Gate {

    /** A phase up to this temperature counts as cool: heat-sensitive materials go in there. Common practice. */
    private static final BigDecimal COOL = new BigDecimal(45);

    @Override
    public String name() {
        return "heat";
    }

    @Override
    public boolean judgesPlace() {
        return true;
    }

    @Override
    public Verdict judge(Trial trial) {
        Figure phase = trial.portion().line().phaseC();
        Figure max = trial.to().traits().maxProcessC();
        if (phase == null) {
            return withoutPhase(trial, max);
        }
        String degrees = Words.plain(phase.value()) + " °C";
        if (max == null) {
            return phase.value().compareTo(COOL) > 0
                    ? Verdict.passWithCaution(
                            this,
                            "the highest process temperature of %s is not known, and the phase is at %s"
                                    .formatted(trial.to().name(), degrees))
                    : Verdict.pass(this, "goes in at " + degrees);
        }
        String withstands = "withstands %s °C".formatted(Words.plain(max.value()));
        return max.value().compareTo(phase.value()) < 0
                ? Verdict.fail(
                        this,
                        "only %s, and the phase is at %s: it would have to go in at cool-down"
                                .formatted(withstands, degrees))
                : Verdict.pass(this, "%s, the phase is at %s".formatted(withstands, degrees));
    }

    private Verdict withoutPhase(Trial trial, @Nullable Figure max) {
        Figure old = trial.from().traits().maxProcessC();
        if (max == null || (old != null && max.value().compareTo(old.value()) >= 0)) {
            return Verdict.pass(this, "the phase's temperature is not known");
        }
        return Verdict.passWithCaution(
                this,
                "the phase's temperature is not known; %s withstands no more than %s °C"
                        .formatted(trial.to().name(), Words.plain(max.value())));
    }
}
