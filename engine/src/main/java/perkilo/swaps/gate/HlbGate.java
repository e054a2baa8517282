package perkilo.swaps.gate;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import perkilo.names.Names;
import perkilo.swaps.facts.Hlb;
import perkilo.swaps.role.Roles;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Recipe;
import perkilo.swaps.trial.Trial;

/**
 * The gate that keeps the HLB of the emulsifiers within 1.5 of what the oils require.
 *
 * <p>It shuts only where the HLB is known of all emulsifiers and what is required of most oils, all emulsifiers are
 * nonionic, and the swap leaves the band or moves farther away from it. Otherwise it shows how the figures move.
 */
final class HlbGate implements Gate {

    /** How far the HLB may be from what the oils require. Common practice. */
    private static final BigDecimal BAND = new BigDecimal("1.5");

    /** Outside the band already, a move away by no more than this is none. Own choice: as exact as HLB is stated. */
    private static final BigDecimal FARTHER = new BigDecimal("0.5");

    /** What is known weighs at least so many times as much as what is not. Own choice. */
    private static final BigDecimal NEARLY = BigDecimal.valueOf(4);

    /** A move by more than this brings a caution. Own choice. */
    private static final BigDecimal WORTH_A_LOOK = BigDecimal.ONE;

    @Override
    public String name() {
        return "HLB";
    }

    @Override
    public boolean dependsOnLevel() {
        return true;
    }

    @Override
    public Verdict judge(Trial trial) {
        Optional<BigDecimal> before = distance(trial.before());
        Optional<BigDecimal> after = distance(trial.after());
        if (after.isPresent()
                && after.get().compareTo(BAND) > 0
                && (before.isEmpty()
                        || before.get().compareTo(BAND) <= 0
                        || after.get().subtract(before.get()).compareTo(FARTHER) > 0)) {
            return Verdict.fail(
                    this,
                    GateMessages.hlbLeavesBand(
                            trial.after().emulsifierHlb().mean().orElseThrow(),
                            trial.after().requiredHlb().mean().orElseThrow()));
        }
        return guide(trial);
    }

    /** How far the emulsifiers are from what the oils require; empty if that is not known of all, or has no meaning. */
    private static Optional<BigDecimal> distance(Recipe recipe) {
        Hlb required = recipe.requiredHlb();
        Hlb emulsifiers = recipe.emulsifierHlb();
        boolean known = recipe.system().isEmulsion()
                && !recipe.system().waterInOil()
                && isNearlyKnown(required)
                && emulsifiers.unknown().signum() == 0
                && recipe.portions().stream().noneMatch(HlbGate::isChargedEmulsifier);
        return known
                ? required.mean()
                        .flatMap(oils ->
                                emulsifiers.mean().map(own -> own.subtract(oils).abs()))
                : Optional.empty();
    }

    /** Whether the required HLB is known of so much of the oils that the rest moves it little. */
    private static boolean isNearlyKnown(Hlb required) {
        return required.unknown().multiply(NEARLY).compareTo(required.mass()) <= 0;
    }

    private static boolean isChargedEmulsifier(Portion portion) {
        return Roles.first(portion.material())
                        .filter(role -> Roles.isEmulsifier(role)
                                || role.isOneOf("co-emulsifier", "cationic conditioner", "fatty acid"))
                        .isPresent()
                && !Names.key(portion.material().traits().charge()).equals("nonionic");
    }

    private Verdict guide(Trial trial) {
        List<String> words = new ArrayList<>();
        List<String> cautions = new ArrayList<>();
        if (trial.before().hasWater()) {
            compare(
                    GateMessages::requiredHlb,
                    trial.before().requiredHlb(),
                    trial.after().requiredHlb(),
                    words,
                    cautions);
        }
        compare(
                GateMessages::emulsifierHlb,
                trial.before().emulsifierHlb(),
                trial.after().emulsifierHlb(),
                words,
                cautions);
        return new Verdict(
                this,
                true,
                words.isEmpty() ? GateMessages.noChange() : String.join(" ", words),
                comesNearer(trial) ? List.of() : cautions);
    }

    /** Whether the emulsifiers come nearer to what the oils require, so far as both are known. */
    private static boolean comesNearer(Trial trial) {
        Optional<BigDecimal> before = apart(trial.before());
        Optional<BigDecimal> after = apart(trial.after());
        return before.isPresent() && after.isPresent() && after.get().compareTo(before.get()) <= 0;
    }

    private static Optional<BigDecimal> apart(Recipe recipe) {
        return recipe.requiredHlb()
                .mean()
                .flatMap(oils -> recipe.emulsifierHlb()
                        .mean()
                        .map(own -> own.subtract(oils).abs()));
    }

    private static void compare(Wording wording, Hlb before, Hlb after, List<String> words, List<String> cautions) {
        Optional<BigDecimal> old = before.mean();
        Optional<BigDecimal> now = after.mean();
        if (old.isEmpty() || now.isEmpty() || old.get().compareTo(now.get()) == 0) {
            return;
        }
        String sentence = wording.of(now.get(), old.get(), after.unknown().signum() <= 0);
        words.add(sentence);
        if (now.get().subtract(old.get()).abs().compareTo(WORTH_A_LOOK) > 0) {
            cautions.add(sentence);
        }
    }

    /** A sentence about a move; {@code complete} says whether the HLB of all materials is known. */
    private interface Wording {

        String of(BigDecimal now, BigDecimal before, boolean complete);
    }
}
