package perkilo.swaps.gate;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.model.Fact;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.origin.Figure;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.facts.Solids;
import perkilo.swaps.role.Role;
import perkilo.swaps.trial.Trial;

/** What changes besides, which people would notice or a stability test would show; guidance that keeps nothing out. */
final class DifferenceGuide implements Gate {

    /** A viscosity that differs by more than this factor. Own choice. */
    private static final BigDecimal THICKNESS = BigDecimal.valueOf(3);

    /**
     * In water, where a thick liquid is thinned: the viscosity of the product that differs by more than this factor, by
     * the rule of mixtures ln η = Σ w ln η (Arrhenius 1887). Own choice.
     */
    private static final double THICKNESS_IN_WATER = 1.5;

    /** Two solids whose melting points differ by more than this, in °C, differ in hardness. Own choice. */
    private static final BigDecimal HARDENS = BigDecimal.TEN;

    /** Next to another colour or odour nobody notices these. Own choice. */
    private static final Set<String> PALE = Set.of("none", "white", "cream", "pale yellow", "faint");

    /** Less active matter than this share of before. Own choice: rounding to a balance is no difference. */
    private static final BigDecimal AS_ACTIVE = new BigDecimal("0.98");

    /** In the words of the EU glossary. */
    private static final String ABSORBENT = "absorbent";

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
        viscosity(trial, cautions);
        solidity(trial, cautions);
        if (steps(from, to, Fact.OXIDATIVE_STABILITY) < 0) {
            cautions.add(GateMessages.oxidisesSooner(to.name(), from.name()));
        }
        clarity(trial, cautions);
        List<String> looks = entering(from, to, Fact.COLOUR_AND_ODOUR);
        boolean looked = from.traits().words(Fact.COLOUR_AND_ODOUR).stream()
                .anyMatch(word -> !Names.key(word).equals("none"));
        looks.removeIf(word -> looked ? PALE.contains(word) : word.equals("none"));
        if (!looks.isEmpty()) {
            cautions.add(GateMessages.looksOrSmells(to.name(), looks));
        }
        List<String> sensitive = entering(from, to, Fact.SENSITIVE_TO);
        sensitive.remove("none");
        if (!sensitive.isEmpty()) {
            cautions.add(GateMessages.isSensitiveTo(to.name(), sensitive));
        }
        activeMatter(trial, cautions);
        absorption(trial, cautions);
        Role role = trial.role();
        if (role != null
                && !role.watch().isEmpty()
                && trial.after().system().is(role.watchIn())
                && !isSameSubstance(from, to)) {
            cautions.add(role.watch() + ".");
        }
        return new Verdict(
                this,
                true,
                cautions.isEmpty() ? GateMessages.noticeableChange() : String.join(" ", cautions),
                cautions);
    }

    private static boolean isSameSubstance(Material from, Material to) {
        return !from.inci().isBlank() && Names.key(from.inci()).equals(Names.key(to.inci()));
    }

    private static void viscosity(Trial trial, List<String> cautions) {
        Material from = trial.from();
        Material to = trial.to();
        Figure old = from.traits().viscosity();
        Figure now = to.traits().viscosity();
        if (old == null
                || now == null
                || old.value().signum() <= 0
                || now.value().signum() <= 0) {
            return;
        }
        boolean inWater = isSolubleIn(from, "water")
                && isSolubleIn(to, "water")
                && trial.after().hasWater();
        double share = trial.dose().to().doubleValue();
        double ofProduct = Math.exp(share
                * Math.abs(Math.log(now.value().doubleValue() / old.value().doubleValue())));
        if (inWater && ofProduct <= THICKNESS_IN_WATER) {
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

    private static void solidity(Trial trial, List<String> cautions) {
        Material from = trial.from();
        Material to = trial.to();
        if (!isOfOils(from) || !isOfOils(to)) {
            return;
        }
        if (Solids.isSolid(from) && Solids.isSolid(to)) {
            if (trial.after().system().isOily()) {
                hardness(from, to, cautions);
            }
        } else if (Solids.isSolid(from) && !Solids.isSolid(to)) {
            cautions.add(GateMessages.becomesSofter(from.name(), to.name()));
        } else if (Solids.isLiquid(from) && Solids.isSolid(to)) {
            cautions.add(GateMessages.becomesHarder(from.name(), to.name()));
        }
    }

    /** By the words for hardness, else by melting points; it shows where oil is outside. */
    private static void hardness(Material from, Material to, List<String> cautions) {
        int steps = steps(from, to, Fact.HARDNESS);
        Figure old = from.traits().meltsAtC();
        Figure now = to.traits().meltsAtC();
        BigDecimal rise =
                old == null || now == null ? BigDecimal.ZERO : now.value().subtract(old.value());
        if (steps != 0) {
            cautions.add(
                    steps > 0
                            ? GateMessages.isHarder(to.name(), from.name())
                            : GateMessages.isSofter(to.name(), from.name()));
        } else if (rise.abs().compareTo(HARDENS) > 0) {
            cautions.add(GateMessages.meltsElsewhere(to.name(), rise));
        }
    }

    /** Cloudiness shows where nothing else is as cloudy: not in emulsions. */
    private static void clarity(Trial trial, List<String> cautions) {
        if (steps(trial.from(), trial.to(), Fact.CLARITY) <= 0
                || trial.after().system().isEmulsion()) {
            return;
        }
        boolean cloudy = false;
        for (int line = 0; line < trial.after().portions().size(); line++) {
            cloudy |= line != trial.line()
                    && place(trial.after().portions().get(line).material(), Fact.CLARITY)
                            >= place(trial.to(), Fact.CLARITY);
        }
        if (!cloudy) {
            cautions.add(
                    GateMessages.becomesCloudy(trial.to().name(), trial.from().name()));
        }
    }

    /** Of powders: starch and clay dry the skin, and metal soaps repel water. */
    private static void absorption(Trial trial, List<String> cautions) {
        Role role = trial.role();
        if (role == null || !role.isOneOf("powder")) {
            return;
        }
        String from = trial.from().name();
        String to = trial.to().name();
        boolean old = Functions.does(trial.from(), ABSORBENT);
        boolean now = Functions.does(trial.to(), ABSORBENT);
        if (now && !old) {
            cautions.add(GateMessages.absorbsNow(to, from));
        } else if (old && !now) {
            cautions.add(GateMessages.absorbsNoMore(to, from));
        }
    }

    /** How many words higher another material is on the scale of a fact; zero where one is not known. */
    private static int steps(Material from, Material to, Fact fact) {
        int old = place(from, fact);
        int now = place(to, fact);
        return old < 0 || now < 0 ? 0 : now - old;
    }

    private static int place(Material material, Fact fact) {
        return fact.choices().indexOf(Names.key(material.traits().word(fact)));
    }

    /** The melting point of what dissolves in water says nothing about the product. */
    private static boolean isOfOils(Material material) {
        return isSolubleIn(material, "oil");
    }

    private static boolean isSolubleIn(Material material, String word) {
        return Names.key(material.traits().solubleIn()).equals(word);
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
