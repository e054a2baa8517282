package perkilo.swaps.gate;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.swaps.trial.Trial;

/**
 * The gate that asks whether a material is used at a usual level; its level is the sum over all lines of the formula.
 */
final class UseRangeGate implements Gate {

    /** By how much rounding may make a dose by active matter miss a limit, as a fraction of the formula. */
    private static final BigDecimal ROUNDING = new BigDecimal("1e-9");

    @Override
    public String name() {
        return "use range";
    }

    @Override
    public boolean dependsOnLevel() {
        return true;
    }

    @Override
    public boolean judgesLevel() {
        return true;
    }

    @Override
    public Verdict judge(Trial trial) {
        Figure min = trial.to().traits().useMin();
        Figure max = trial.to().traits().useMax();
        BigDecimal level = trial.after().levelOf(trial.to());
        if (min == null && max == null) {
            return Verdict.passWithCaution(
                    this, GateMessages.useRangeUnknown(trial.to().name()));
        }
        BigDecimal from = value(min);
        BigDecimal to = value(max);
        boolean below = min != null && level.add(ROUNDING).compareTo(min.value()) < 0;
        boolean above = max != null && level.subtract(ROUNDING).compareTo(max.value()) > 0;
        if (below || above) {
            return Verdict.fail(this, GateMessages.outsideUseRange(level, from, to));
        }
        return min == null || max == null
                ? Verdict.passWithCaution(
                        this, GateMessages.useRangeHalfKnown(trial.to().name(), level, from, to))
                : Verdict.pass(this, GateMessages.inUseRange(level, from, to));
    }

    private static @Nullable BigDecimal value(@Nullable Figure figure) {
        return figure == null ? null : figure.value();
    }
}
