package perkilo.swaps.gate;

import perkilo.names.Names;
import perkilo.swaps.trial.PhaseNature;
import perkilo.swaps.trial.Trial;

/**
 * The gate that asks whether a material dissolves in the phase.
 *
 * <p>What dissolves in both oil and water fits everywhere. A powder only replaces a powder. What dissolves in the same
 * as the replaced material fits as well as that did.
 */
final class SolubilityGate implements Gate {

    static final String BOTH = "both";
    static final String POWDER = "powder";

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
            return Verdict.fail(this, GateMessages.solubilityUnknown(name));
        }
        if (own.equals(old)) {
            return Verdict.pass(
                    this, GateMessages.dissolvesLike(own, trial.from().name()));
        }
        if (own.equals(POWDER)) {
            return Verdict.fail(
                    this, GateMessages.onlyOneIsPowder(name, trial.from().name()));
        }
        if (old.equals(POWDER)) {
            return Verdict.fail(this, GateMessages.onlyOneIsPowder(trial.from().name(), name));
        }
        if (own.equals(BOTH) || fits(own, nature)) {
            return Verdict.pass(this, GateMessages.fitsPhase(own, nature));
        }
        return Verdict.fail(
                this,
                nature == PhaseNature.UNKNOWN
                        ? GateMessages.phaseUnknown(own, trial.from().name())
                        : GateMessages.doesNotDissolve(own, nature));
    }

    private static boolean fits(String solubleIn, PhaseNature nature) {
        return switch (nature) {
            case WATER -> solubleIn.equals("water");
            case OIL -> solubleIn.equals("oil");
            case EMULSION -> solubleIn.equals("water") || solubleIn.equals("oil");
            case UNKNOWN -> false;
        };
    }
}
