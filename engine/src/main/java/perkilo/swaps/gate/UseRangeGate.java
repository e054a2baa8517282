package perkilo.swaps.gate;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import perkilo.model.ProductKind;
import perkilo.origin.Figure;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.law.Law;
import perkilo.swaps.role.Role;
import perkilo.swaps.role.Roles;
import perkilo.swaps.trial.Trial;

/**
 * The gate that asks whether a material is used at a usual level; its level is the sum over all lines of the formula.
 */
final class UseRangeGate implements Gate {

    /** By how much rounding may make a dose by active matter miss a limit, as a fraction of the formula. */
    private static final BigDecimal ROUNDING = new BigDecimal("1e-9");

    private static final Set<String> OPEN_WITHOUT_WATER = Set.of(
            "emollient ester",
            "triglyceride oil",
            "hydrocarbon",
            "silicone",
            "volatile emollient",
            "butter",
            "wax",
            "fatty alcohol",
            "fatty acid",
            "acid",
            "buffer salt",
            "powder",
            "abrasive",
            "primary surfactant",
            "propellant");

    /** What may make up a product without water although it does not yet; other oils keep their usual level. */
    private static final Set<String> CARRIERS = Set.of(
            "triglyceride oil",
            "volatile emollient",
            "butter",
            "wax",
            "powder",
            "abrasive",
            "primary surfactant",
            "propellant");

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
        Optional<BigDecimal> lawful = lawful(trial);
        if (above && !below && lawful.isPresent() && level.subtract(ROUNDING).compareTo(lawful.get()) <= 0) {
            return Verdict.pass(this, GateMessages.lawfulRange(level, lawful.get()));
        }
        if (above && !below && isOpenEnded(trial)) {
            return Verdict.pass(this, GateMessages.anhydrousSum(level));
        }
        if (below || above) {
            return Verdict.fail(this, GateMessages.outsideUseRange(level, from, to));
        }
        return min == null || max == null
                ? Verdict.passWithCaution(
                        this, GateMessages.useRangeHalfKnown(trial.to().name(), level, from, to))
                : Verdict.pass(this, GateMessages.inUseRange(level, from, to));
    }

    /** The legal maximum of a preservative for this kind of product: usual levels go up to it. */
    private static Optional<BigDecimal> lawful(Trial trial) {
        return Roles.preserves(trial.to())
                ? Law.most(trial.to(), trial.after().kind(), trial.after().day())
                : Optional.empty();
    }

    /**
     * Whether the usual level is one of mixed products, and this one consists of such materials: oils, butters and
     * waxes without water, powders, bars of surfactants, alcohol in perfume.
     */
    private static boolean isOpenEnded(Trial trial) {
        Set<String> roles = Roles.of(trial.to()).stream().map(Role::name).collect(Collectors.toSet());
        boolean perfume = trial.after().kind().is(ProductKind.Word.PERFUME)
                || trial.after().kind().is(ProductKind.Word.SPRAY);
        if (perfume && roles.contains("solvent")) {
            return true;
        }
        if (!trial.from().equals(trial.to()) && roles.stream().noneMatch(CARRIERS::contains)) {
            return false;
        }
        boolean isOil = Functions.work(trial.to()).equals(Functions.EMOLLIENT);
        return !trial.after().hasWater()
                && (isOil || OPEN_WITHOUT_WATER.stream().anyMatch(roles::contains));
    }

    private static @Nullable BigDecimal value(@Nullable Figure figure) {
        return figure == null ? null : figure.value();
    }
}
