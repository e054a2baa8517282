package perkilo.swaps.gate;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.trial.Trial;
import perkilo.swaps.trial.Words;

/** It works at the product's final pH. */
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
            return Functions.work(trial.from()).equals(Functions.PRESERVATIVE)
                    ? Verdict.passWithCaution(
                            this,
                            "the pH range in which %s preserves is not known"
                                    .formatted(trial.to().name()))
                    : Verdict.pass(this, "no pH range is stated");
        }
        String range = "works from pH %s to %s".formatted(plain(min), plain(max));
        if (ph == null) {
            return trial.before().hasWater()
                    ? Verdict.passWithCaution(
                            this,
                            "%s %s, and the final pH is not known"
                                    .formatted(trial.to().name(), range))
                    : Verdict.pass(this, range + "; the formula holds no water");
        }
        boolean inside = isAtLeast(ph.value(), min) && isAtMost(ph.value(), max);
        String words = "%s, the final pH is %s".formatted(range, Words.plain(ph.value()));
        return inside ? Verdict.pass(this, words) : Verdict.fail(this, words);
    }

    private static boolean isAtLeast(BigDecimal ph, @Nullable Figure min) {
        return min == null || ph.compareTo(min.value()) >= 0;
    }

    private static boolean isAtMost(BigDecimal ph, @Nullable Figure max) {
        return max == null || ph.compareTo(max.value()) <= 0;
    }

    private static String plain(@Nullable Figure figure) {
        return figure == null ? "?" : Words.plain(figure.value());
    }
}
