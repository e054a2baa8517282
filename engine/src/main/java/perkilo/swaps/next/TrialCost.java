package perkilo.swaps.next;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import perkilo.model.Formula;
import perkilo.model.Settings;
import perkilo.origin.Figure;
import perkilo.swaps.money.RunChange;

/**
 * What it costs to try a swap or a blend at the bench, and how much has to be made until its saving has paid for that.
 *
 * @param choice how a person asks for it: {@code swap 3}, {@code blend 1}
 * @param formula the formula as it is
 * @param out names of what goes out
 * @param in names of what comes in
 * @param packs what is bought for the bench, in words; empty for nothing, or if it cannot be bought
 * @param materials what that costs with freight, charges and duty, in home currency; null if it cannot be bought
 * @param tests what the tests cost
 * @param runs what the change saves at each run size, in the order of the book
 */
public record TrialCost(
        String choice,
        Formula formula,
        List<String> out,
        List<String> in,
        List<String> packs,
        @Nullable BigDecimal materials,
        Settings.Testing tests,
        List<RunChange> runs) {

    public TrialCost {
        out = List.copyOf(out);
        in = List.copyOf(in);
        packs = List.copyOf(packs);
        runs = List.copyOf(runs);
    }

    /** Everything whose price is known, in home currency. */
    public BigDecimal known() {
        BigDecimal known = materials == null ? BigDecimal.ZERO : materials;
        return known.add(orNothing(tests.stability()))
                .add(orNothing(tests.challenge()))
                .add(orNothing(tests.assessment()));
    }

    private static BigDecimal orNothing(@Nullable Figure price) {
        return price == null ? BigDecimal.ZERO : price.value();
    }

    /** What is not in {@link #known} because its price is not known. */
    public List<String> notKnown() {
        List<String> missing = new ArrayList<>();
        if (materials == null) {
            missing.add("materials");
        }
        if (tests.stability() == null) {
            missing.add("stability test");
        }
        if (tests.challenge() == null) {
            missing.add("challenge test");
        }
        if (tests.assessment() == null) {
            missing.add("assessment");
        }
        return missing;
    }

    /** Whether nothing of the cost is known, though something is to be paid. */
    public boolean isCostUnknown() {
        return known().signum() == 0 && !notKnown().isEmpty();
    }

    /** Whether it is the trial of a blend. */
    public boolean isOfBlend() {
        return choice.startsWith("blend");
    }

    /** The saving for one unit, or for one kilogram of bulk that is not filled; zero or below for none. */
    public static BigDecimal saving(RunChange run) {
        return run.unitCost()
                .orElseGet(
                        () -> run.total().divide(run.before().needs().batches().output(), MathContext.DECIMAL128))
                .negate();
    }

    /**
     * How many units, or kilograms of bulk, pay the trial back: what is known of its cost, divided by the saving and
     * rounded up.
     *
     * @return empty for never, as there is no saving
     */
    public Optional<BigDecimal> paysBack(RunChange run) {
        BigDecimal saving = saving(run);
        return saving.signum() <= 0
                ? Optional.empty()
                : Optional.of(known().divide(saving, MathContext.DECIMAL128).setScale(0, RoundingMode.CEILING));
    }
}
