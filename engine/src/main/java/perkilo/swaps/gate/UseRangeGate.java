package perkilo.swaps.gate;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.swaps.trial.Trial;
import perkilo.swaps.trial.Words;

/** Its level, over all lines of the formula, is one at which it is usually used. */
final class UseRangeGate implements Gate {

    /** What dosing by active matter may miss a limit by through rounding, as a fraction of the formula. */
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
                    this,
                    "the use range of %s is not known".formatted(trial.to().name()));
        }
        String range = "%s, usual are %s to %s".formatted(Words.percent(level), percent(min), percent(max));
        boolean below = min != null && level.add(ROUNDING).compareTo(min.value()) < 0;
        boolean above = max != null && level.subtract(ROUNDING).compareTo(max.value()) > 0;
        if (below || above) {
            return Verdict.fail(this, range);
        }
        return min == null || max == null
                ? Verdict.passWithCaution(
                        this,
                        "the use range of %s is only known on one side: %s"
                                .formatted(trial.to().name(), range))
                : Verdict.pass(this, range);
    }

    private static String percent(@Nullable Figure figure) {
        return figure == null ? "?" : Words.percent(figure.value());
    }
}
