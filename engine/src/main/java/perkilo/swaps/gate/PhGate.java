package perkilo.swaps.gate;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.swaps.role.Roles;
import perkilo.swaps.trial.Trial;

/** The gate that asks whether a material works at the product's final pH. */
final class PhGate implements Gate {

    @Override
    public String name() {
        return "pH";
    }

    @Override
    public boolean judgesPlace() {
        return true;
    }

    @Override
    public Verdict judge(Trial trial) {
        Figure min = trial.to().traits().phMin();
        Figure max = trial.to().traits().phMax();
        Figure ph = trial.before().formula().batching().finalPh();
        if (min == null && max == null) {
            return trial.role() != null && Roles.isPreserving(trial.role())
                    ? Verdict.passWithCaution(
                            this, GateMessages.preservingPhUnknown(trial.to().name()))
                    : Verdict.pass(this, GateMessages.noPhRange());
        }
        BigDecimal from = value(min);
        BigDecimal to = value(max);
        if (ph == null) {
            return trial.before().hasWater()
                    ? Verdict.passWithCaution(
                            this, GateMessages.finalPhUnknown(trial.to().name(), from, to))
                    : Verdict.pass(this, GateMessages.noWater(from, to));
        }
        boolean inside = isAtLeast(ph.value(), min) && isAtMost(ph.value(), max);
        return inside
                ? Verdict.pass(this, GateMessages.worksAtPh(from, to, ph.value()))
                : Verdict.fail(this, GateMessages.doesNotWorkAtPh(from, to, ph.value()));
    }

    private static boolean isAtLeast(BigDecimal ph, @Nullable Figure min) {
        return min == null || ph.compareTo(min.value()) >= 0;
    }

    private static boolean isAtMost(BigDecimal ph, @Nullable Figure max) {
        return max == null || ph.compareTo(max.value()) <= 0;
    }

    private static @Nullable BigDecimal value(@Nullable Figure figure) {
        return figure == null ? null : figure.value();
    }
}
