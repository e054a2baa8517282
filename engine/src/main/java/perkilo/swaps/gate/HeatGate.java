package perkilo.swaps.gate;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import perkilo.model.Fact;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.origin.Figure;
import perkilo.swaps.trial.Trial;

/** The gate that asks whether a material withstands the temperature of the phase, and stays in it. */
final class HeatGate implements Gate {

    /** A phase up to this temperature counts as cool: heat-sensitive materials are added there. Common practice. */
    private static final BigDecimal COOL = new BigDecimal(45);

    /** What evaporates from the skin is lost from a phase that is hotter than this. Common practice. */
    private static final BigDecimal HOT = new BigDecimal(60);

    /** Few phases become hotter than this. Common practice. */
    private static final BigDecimal USUAL = new BigDecimal(75);

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
        if (evaporates(trial.to()) && phase.value().compareTo(HOT) > 0) {
            return Verdict.fail(this, GateMessages.evaporates(phase.value()));
        }
        if (max == null) {
            return phase.value().compareTo(COOL) > 0
                    ? Verdict.passWithCaution(
                            this, GateMessages.maxTemperatureUnknown(trial.to().name(), phase.value()))
                    : Verdict.pass(this, GateMessages.addedAt(phase.value()));
        }
        return max.value().compareTo(phase.value()) < 0
                ? Verdict.fail(this, GateMessages.tooHot(max.value(), phase.value()))
                : Verdict.pass(this, GateMessages.withstands(max.value(), phase.value()));
    }

    /** Water evaporates too, but is made up for. */
    private static boolean evaporates(Material material) {
        return !material.isWater()
                && Names.key(material.traits().word(Fact.VOLATILE)).equals("yes");
    }

    private Verdict withoutPhase(Trial trial, @Nullable Figure max) {
        Figure old = trial.from().traits().maxProcessC();
        if (max == null
                || max.value().compareTo(USUAL) >= 0
                || (old != null && max.value().compareTo(old.value()) >= 0)) {
            return Verdict.pass(this, GateMessages.phaseTemperatureUnknown());
        }
        return Verdict.passWithCaution(this, GateMessages.maybeTooHot(trial.to().name(), max.value()));
    }
}
