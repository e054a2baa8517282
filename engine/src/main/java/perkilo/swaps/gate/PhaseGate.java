package perkilo.swaps.gate;

import java.math.BigDecimal;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.role.Role;
import perkilo.swaps.role.Roles;
import perkilo.swaps.trial.PhaseNature;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Recipe;
import perkilo.swaps.trial.Trial;

/**
 * The gate that asks whether a material dissolves, melts or disperses in the phase.
 *
 * <p>What dissolves in both oil and water, and a powder, fits everywhere. Emulsifiers and conditioners melt or disperse
 * in the oil phase; thickeners for water are dispersed in it and swell later. Surfactants and solubilisers take up a
 * little oil in a water phase. What dissolves in the same as the replaced material fits as well as that did.
 */
final class PhaseGate implements Gate {

    static final String BOTH = "both";
    static final String POWDER = "powder";
    private static final String WATER = "water";
    private static final String OIL = "oil";

    /** So much of a phase is taken up by surfactants, if there are as many of them. Own choice. */
    private static final BigDecimal SOLUBILISED = new BigDecimal("0.05");

    @Override
    public String name() {
        return "phase";
    }

    @Override
    public boolean judgesPlace() {
        return true;
    }

    @Override
    public Verdict judge(Trial trial) {
        Material to = trial.to();
        String own = Names.key(to.traits().solubleIn());
        boolean isPlace = trial.from().equals(to);
        if (own.isEmpty()) {
            return isPlace
                    ? Verdict.pass(this, GateMessages.solubilityUnknown(to.name()))
                    : Verdict.fail(this, GateMessages.solubilityUnknown(to.name()));
        }
        PhaseNature nature = trial.nature();
        if (!isPlace && own.equals(Names.key(trial.from().traits().solubleIn()))) {
            return Verdict.pass(
                    this, GateMessages.dissolvesLike(own, trial.from().name()));
        }
        if (own.equals(BOTH) || own.equals(POWDER) || fits(own, nature)) {
            return Verdict.pass(this, GateMessages.fitsPhase(own, nature));
        }
        if (nature == PhaseNature.UNKNOWN) {
            return isPlace
                    ? Verdict.pass(this, GateMessages.fitsPhase(own, nature))
                    : Verdict.fail(
                            this, GateMessages.phaseUnknown(own, trial.from().name()));
        }
        if (nature == PhaseNature.OIL && meltsInOil(to)) {
            return Verdict.pass(this, GateMessages.meltsInOil());
        }
        if (nature == PhaseNature.OIL && trial.before().hasWater() && thickensWater(to)) {
            return Verdict.pass(this, GateMessages.dispersesInOil());
        }
        if (own.equals(OIL) && isSolubilised(trial)) {
            return Verdict.pass(this, GateMessages.isSolubilised(nature));
        }
        if (isPlace && isMadeInOnePot(trial)) {
            return Verdict.pass(this, GateMessages.fitsPhase(own, PhaseNature.UNKNOWN));
        }
        return Verdict.fail(this, GateMessages.doesNotDissolve(own, nature));
    }

    private static boolean fits(String solubleIn, PhaseNature nature) {
        return switch (nature) {
            case WATER -> solubleIn.equals(WATER);
            case OIL -> solubleIn.equals(OIL);
            case EMULSION -> solubleIn.equals(WATER) || solubleIn.equals(OIL);
            case UNKNOWN -> false;
        };
    }

    private static boolean meltsInOil(Material material) {
        return hasRole(
                        material,
                        "O/W emulsifier",
                        "W/O emulsifier",
                        "co-emulsifier",
                        "cationic conditioner",
                        "solubiliser")
                || Functions.work(material).equals(Functions.EMULSIFYING);
    }

    private static boolean thickensWater(Material material) {
        return hasRole(material, "gum", "neutralised polymer thickener", "nonionic polymer thickener", "clay");
    }

    private static boolean hasRole(Material material, String... names) {
        for (Role role : Roles.of(material)) {
            if (role.isOneOf(names)) {
                return true;
            }
        }
        return false;
    }

    /** Whether the phase, or the formula, holds enough that takes up the oil of this line. */
    private static boolean isSolubilised(Trial trial) {
        BigDecimal oil = trial.dose().to();
        if (oil.compareTo(SOLUBILISED) > 0) {
            return false;
        }
        BigDecimal takesUp = BigDecimal.ZERO;
        for (Portion portion : trial.before().portions()) {
            boolean does = Roles.of(portion.material()).stream()
                    .anyMatch(role -> Roles.isSurfactant(role)
                            || role.isOneOf("solubiliser", "refatting agent", "cationic conditioner")
                            || isAlcohol(portion.material(), role));
            takesUp = does ? takesUp.add(portion.level()) : takesUp;
        }
        return takesUp.compareTo(oil) >= 0;
    }

    private static boolean isAlcohol(Material material, Role role) {
        return role.isOneOf("solvent")
                && Names.key(material.traits().solubleIn()).equals(BOTH);
    }

    /** Whether all of an emulsion is in one phase, or its water and its oils are in this one. */
    private static boolean isMadeInOnePot(Trial trial) {
        Recipe recipe = trial.before();
        String phase = Names.key(trial.portion().line().phase());
        boolean emulsifier = false;
        boolean elsewhere = false;
        String own = Names.key(trial.to().traits().solubleIn());
        for (Portion portion : recipe.portions()) {
            boolean here = Names.key(portion.line().phase()).equals(phase);
            emulsifier |= here && meltsInOil(portion.material());
            elsewhere |= !here
                    && Names.key(portion.material().traits().solubleIn()).equals(own)
                    && !isCoolDown(recipe, portion);
        }
        return emulsifier && !elsewhere;
    }

    private static boolean isCoolDown(Recipe recipe, Portion portion) {
        return recipe.natureOf(recipe.portions().indexOf(portion)) == PhaseNature.EMULSION;
    }
}
