package perkilo.swaps.gate;

import java.math.BigDecimal;
import java.util.List;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.origin.Figure;
import perkilo.swaps.role.Role;
import perkilo.swaps.role.Roles;
import perkilo.swaps.trial.PhaseNature;
import perkilo.swaps.trial.Trial;

/** The gate that asks whether a material melts in the phase. */
final class MeltingGate implements Gate {

    private static final String[] MELT = {
        "butter",
        "wax",
        "fatty alcohol",
        "fatty acid",
        "oil thickener",
        "emollient ester",
        "triglyceride oil",
        "hydrocarbon",
        "silicone",
        "O/W emulsifier",
        "W/O emulsifier",
        "co-emulsifier",
        "cationic conditioner",
        "pearliser"
    };

    private static final BigDecimal ROOM = new BigDecimal(25);

    @Override
    public String name() {
        return "melting";
    }

    @Override
    public boolean judgesPlace() {
        return true;
    }

    @Override
    public Verdict judge(Trial trial) {
        Figure melts = trial.to().traits().meltsAtC();
        Figure phase = trial.portion().line().phaseC();
        if (melts == null) {
            return Verdict.pass(this, GateMessages.noMeltingPoint());
        }
        if (!hasToMelt(trial)) {
            return Verdict.pass(this, GateMessages.dissolvesInPhase());
        }
        if (phase != null) {
            return melts.value().compareTo(phase.value()) > 0
                    ? Verdict.fail(this, GateMessages.doesNotMelt(melts.value(), phase.value()))
                    : Verdict.pass(this, GateMessages.meltsInPhase(melts.value(), phase.value()));
        }
        return melts.value().compareTo(ROOM) > 0
                ? Verdict.passWithCaution(
                        this, GateMessages.maybeDoesNotMelt(trial.to().name(), melts.value()))
                : Verdict.pass(this, GateMessages.melts(melts.value()));
    }

    /**
     * Whether it has to melt: waxes, butters and the like, and emulsifiers. What dissolves in the phase, such as salts
     * in water and crystals of an active in oil, does not, and a powder stays one.
     */
    private static boolean hasToMelt(Trial trial) {
        Material to = trial.to();
        String solubleIn = Names.key(to.traits().solubleIn());
        boolean dissolves = solubleIn.equals("powder")
                || (!solubleIn.equals("oil") && trial.nature() == PhaseNature.WATER)
                || solubleIn.equals("water");
        if (dissolves) {
            return false;
        }
        List<Role> roles = Roles.of(to);
        return roles.isEmpty() || roles.stream().anyMatch(role -> role.isOneOf(MELT));
    }
}
