package perkilo.swaps.gate;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.model.Fact;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.origin.Figure;
import perkilo.swaps.facts.Solids;
import perkilo.swaps.role.Role;
import perkilo.swaps.trial.Trial;

/** What changes besides, which people would notice or a stability test would show; guidance that keeps nothing out. */
final class DifferenceGuide implements Gate {

    /** A viscosity that differs by more than this factor. Own choice. */
    private static final BigDecimal THICKNESS = BigDecimal.valueOf(3);

    /** Less active matter than this share of before. Own choice: rounding to a balance is no difference. */
    private static final BigDecimal AS_ACTIVE = new BigDecimal("0.98");

    @Override
    public String name() {
        return "other changes";
    }

    @Override
    public boolean dependsOnLevel() {
        return true;
    }

    @Override
    public Verdict judge(Trial trial) {
        List<String> cautions = new ArrayList<>();
        Material from = trial.from();
        Material to = trial.to();
        if (isOfOils(from) && isOfOils(to)) {
            viscosity(from, to, cautions);
        }
        solidity(from, to, cautions);
        List<String> looks = entering(from, to, Fact.COLOUR_AND_ODOUR);
        looks.remove("none");
        if (!looks.isEmpty()) {
            cautions.add(GateMessages.looksOrSmells(to.name(), looks));
        }
        List<String> sensitive = entering(from, to, Fact.SENSITIVE_TO);
        sensitive.remove("none");
        if (!sensitive.isEmpty()) {
            cautions.add(GateMessages.isSensitiveTo(to.name(), sensitive));
        }
        activeMatter(trial, cautions);
        return new Verdict(
                this,
                true,
                cautions.isEmpty() ? GateMessages.noticeableChange() : String.join(" ", cautions),
                cautions);
    }

    private static void viscosity(Material from, Material to, List<String> cautions) {
        Figure old = from.traits().viscosity();
        Figure now = to.traits().viscosity();
        if (old == null
                || now == null
                || old.value().signum() <= 0
                || now.value().signum() <= 0) {
            return;
        }
        BigDecimal up = now.value().divide(old.value(), MathContext.DECIMAL32);
        BigDecimal down = old.value().divide(now.value(), MathContext.DECIMAL32);
        if (up.compareTo(THICKNESS) > 0) {
            cautions.add(GateMessages.thicker(up));
        } else if (down.compareTo(THICKNESS) > 0) {
            cautions.add(GateMessages.thinner(down));
        }
    }

    private static void solidity(Material from, Material to, List<String> cautions) {
        if (!isOfOils(from) || !isOfOils(to)) {
            return;
        }
        if (Solids.isSolid(from) && !Solids.isSolid(to)) {
            cautions.add(GateMessages.becomesSofter(from.name(), to.name()));
        } else if (Solids.isLiquid(from) && Solids.isSolid(to)) {
            cautions.add(GateMessages.becomesHarder(from.name(), to.name()));
        }
    }

    /** The melting point and the viscosity of what dissolves in water say nothing about the product. */
    private static boolean isOfOils(Material material) {
        return Names.key(material.traits().solubleIn()).equals("oil");
    }

    private static List<String> entering(Material from, Material to, Fact fact) {
        List<String> before = from.traits().words(fact).stream().map(Names::key).toList();
        return new ArrayList<>(to.traits().words(fact).stream()
                .map(Names::key)
                .filter(word -> !before.contains(word))
                .toList());
    }

    private static void activeMatter(Trial trial, List<String> cautions) {
        Figure old = trial.from().traits().active();
        Figure now = trial.to().traits().active();
        boolean byActive = trial.role() != null && trial.role().dosed() == Role.Dosed.EQUAL_ACTIVE;
        if (old == null || now == null || !byActive) {
            return;
        }
        BigDecimal before = active(trial.portion().level(), old);
        BigDecimal after = active(trial.dose().to(), now);
        if (after.compareTo(before.multiply(AS_ACTIVE)) < 0) {
            cautions.add(GateMessages.lessActive(trial.to().name(), after, before));
        }
    }

    private static BigDecimal active(BigDecimal level, @Nullable Figure active) {
        return active == null ? level : level.multiply(active.value());
    }
}
