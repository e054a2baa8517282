package perkilo.swaps.gate;

import perkilo.names.Names;
import perkilo.swaps.trial.PhaseNature;
import perkilo.swaps.trial.Trial;

/**
 * It dissolves in the phase.
 *
 * <p>What dissolves in both fits everywhere, a powder only replaces a powder, and what dissolves where the replaced
 * material does fits as well as that did.
 */
final class SolubilityGate implements Gate {

    private static final String BOTH = "both";
    private static final String POWDER = "powder";

    @Override
    public String name() {
        return "solubility";
    }

    @Override
    public Verdict judge(Trial trial) {
        String own = Names.key(trial.to().traits().solubleIn());
        String old = Names.key(trial.from().traits().solubleIn());
        PhaseNature nature = trial.nature();
        String name = trial.to().name();
        if (own.isEmpty()) {
            return Verdict.fail(this, "where %s dissolves is not known".formatted(name));
        }
        if (own.equals(old)) {
            return Verdict.pass(this, describe(own) + ", as " + trial.from().name());
        }
        if (own.equals(POWDER) || old.equals(POWDER)) {
            return Verdict.fail(
                    this, "one of the two is a powder that is dispersed, and the other dissolves: %s".formatted(name));
        }
        if (own.equals(BOTH) || fits(own, nature)) {
            return Verdict.pass(this, "%s: fits the %s".formatted(describe(own), nature.words()));
        }
        return Verdict.fail(
                this,
                nature == PhaseNature.UNKNOWN
                        ? "%s, unlike %s, and what the phase dissolves is not known"
                                .formatted(describe(own), trial.from().name())
                        : "%s: does not dissolve in the %s".formatted(describe(own), nature.words()));
    }

    private static boolean fits(String solubleIn, PhaseNature nature) {
        return switch (nature) {
            case WATER -> solubleIn.equals("water");
            case OIL -> solubleIn.equals("oil");
            case EMULSION -> solubleIn.equals("water") || solubleIn.equals("oil");
            case UNKNOWN -> false;
        };
    }

    private static String describe(String solubleIn) {
        return switch (solubleIn) {
            case BOTH -> "dissolves or disperses in oil and in water";
            case POWDER -> "a powder that is dispersed";
            default -> "soluble in " + solubleIn;
        };
    }
}
