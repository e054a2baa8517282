package perkilo.swaps.gate;

import java.math.BigDecimal;
import java.math.MathContext;
import perkilo.origin.Figure;
import perkilo.swaps.facts.Solids;
import perkilo.swaps.role.Role;
import perkilo.swaps.trial.Trial;

/**
 * The gate that keeps an oil an oil: what is liquid is not replaced by what is solid, and nothing by what is more than
 * ten times as thick or as thin. The factor is an own choice; unknown facts are the closeness's matter.
 */
final class TextureGate implements Gate {

    private static final BigDecimal FARTHEST = BigDecimal.TEN;

    @Override
    public String name() {
        return "texture";
    }

    @Override
    public Verdict judge(Trial trial) {
        Role role = trial.role();
        if (role == null
                || !role.isOneOf(
                        "emollient ester", "triglyceride oil", "hydrocarbon", "silicone", "volatile emollient")) {
            return Verdict.pass(this, GateMessages.noOil());
        }
        if (isSolidForLiquid(trial)) {
            return Verdict.fail(
                    this,
                    GateMessages.solidForLiquid(trial.to().name(), trial.from().name()));
        }
        Figure old = trial.from().traits().viscosity();
        Figure now = trial.to().traits().viscosity();
        if (old == null
                || now == null
                || old.value().signum() <= 0
                || now.value().signum() <= 0) {
            return Verdict.pass(this, GateMessages.viscosityNotCompared());
        }
        BigDecimal times = now.value().divide(old.value(), MathContext.DECIMAL32);
        boolean thicker = times.compareTo(FARTHEST) > 0;
        boolean thinner = BigDecimal.ONE.divide(times, MathContext.DECIMAL32).compareTo(FARTHEST) > 0;
        return thicker || thinner
                ? Verdict.fail(this, GateMessages.otherThickness(trial.to().name(), now.value(), old.value()))
                : Verdict.pass(this, GateMessages.likeThickness(now.value(), old.value()));
    }

    private static boolean isSolidForLiquid(Trial trial) {
        return (Solids.isSolid(trial.from()) && Solids.isLiquid(trial.to()))
                || (Solids.isLiquid(trial.from()) && Solids.isSolid(trial.to()));
    }
}
