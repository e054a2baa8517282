package perkilo.swaps.gate;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import perkilo.model.Material;
import perkilo.origin.Figure;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.law.Law;
import perkilo.swaps.law.Ruling;
import perkilo.swaps.role.Role;
import perkilo.swaps.role.Roles;
import perkilo.swaps.trial.Trial;

/**
 * The gate that compares levels with the law.
 *
 * <p>The tables of the law come first, for the kind of product. A maximum that a person typed counts besides if it is
 * lower, unless it is that of another kind of product. What depends on something that is not known is not offered. A
 * preservative, UV filter or colourant without any limit gets a caution.
 */
final class LegalLimitGate implements Gate {

    private static final BigDecimal ROUNDING = new BigDecimal("1e-9");
    private static final List<String> LISTED = List.of(Functions.PRESERVATIVE, "uv filter", Functions.COLORANT);

    @Override
    public String name() {
        return "legal maximum";
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
        Material to = trial.to();
        Role role = trial.role();
        boolean preserves = role != null && Roles.isPreserving(role);
        List<String> words = new ArrayList<>();
        List<String> cautions = new ArrayList<>();
        for (Ruling ruling : trial.after().law().rulings(to, preserves)) {
            if (ruling.outcome() == Ruling.Outcome.BROKEN
                    || (ruling.outcome() == Ruling.Outcome.UNCLEAR && !wasSoBefore(trial, ruling, preserves))) {
                return Verdict.fail(this, ruling.words());
            }
            words.add(ruling.words());
            if (ruling.outcome() == Ruling.Outcome.UNCLEAR) {
                cautions.add(ruling.words());
            }
            cautions.addAll(ruling.cautions());
        }
        return typed(trial, words, cautions);
    }

    private Verdict typed(Trial trial, List<String> words, List<String> cautions) {
        Material to = trial.to();
        Figure stated = to.traits().legalMax();
        BigDecimal level = trial.after().levelOf(to);
        if (stated != null && level.subtract(ROUNDING).compareTo(stated.value()) > 0) {
            if (!Law.isOfOtherKind(
                    to, stated.value(), trial.after().kind(), trial.after().day())) {
                return Verdict.fail(this, GateMessages.aboveLegalMaximum(level, stated.value()));
            }
            cautions.add(GateMessages.maximumOfOtherKind(to.name(), stated.value()));
        } else if (stated != null) {
            words.add(GateMessages.withinLegalMaximum(level, stated.value()));
        }
        if (!words.isEmpty()) {
            return new Verdict(this, true, String.join(" ", words), cautions);
        }
        return LISTED.stream().anyMatch(work -> Functions.does(to, work))
                ? Verdict.passWithCaution(this, GateMessages.legalMaximumUnknown(to.name()))
                : Verdict.pass(this, GateMessages.noLegalMaximum());
    }

    /** Whether the formula has had as much of the same group all along. */
    private static boolean wasSoBefore(Trial trial, Ruling ruling, boolean preserves) {
        Optional<Ruling> before = trial.before().law().rulings(trial.to(), preserves).stream()
                .filter(other -> other.group().equals(ruling.group()))
                .findFirst();
        return before.isPresent()
                && before.get().level().signum() > 0
                && before.get().level().add(ROUNDING).compareTo(ruling.level()) >= 0;
    }
}
