package perkilo.swaps.gate;

import perkilo.names.Names;
import perkilo.swaps.role.Role;
import perkilo.swaps.role.Roles;
import perkilo.swaps.trial.FormulaSystem;
import perkilo.swaps.trial.Recipe;
import perkilo.swaps.trial.Trial;

/**
 * The gate that keeps an emulsion what it is: oil in water or water in oil, with an emulsifier that carries it, and of
 * the charge that it had.
 */
final class EmulsionGate implements Gate {

    @Override
    public String name() {
        return "emulsion";
    }

    @Override
    public boolean dependsOnLevel() {
        return true;
    }

    @Override
    public Verdict judge(Trial trial) {
        String old = Names.key(trial.from().traits().charge());
        String now = Names.key(trial.to().traits().charge());
        boolean isEmulsifier = trial.role() != null && Roles.isEmulsifier(trial.role());
        // unknown charges are the closeness's matter
        if (isEmulsifier && !old.isEmpty() && !now.isEmpty() && !old.equals(now)) {
            return Verdict.fail(
                    this,
                    GateMessages.otherChargeOfEmulsifier(
                            trial.to().name(), now, trial.from().name(), old));
        }
        FormulaSystem before = trial.before().system();
        FormulaSystem after = trial.after().system();
        if (!before.isEmulsion() || !hasEmulsifier(trial.before())) {
            return Verdict.pass(this, GateMessages.noEmulsion());
        }
        if (!hasEmulsifier(trial.after())) {
            return Verdict.fail(this, GateMessages.noEmulsifierLeft());
        }
        return before.waterInOil() == after.waterInOil()
                ? Verdict.pass(this, GateMessages.emulsionStays(after.waterInOil()))
                : Verdict.fail(this, GateMessages.emulsionTurns(before.waterInOil(), after.waterInOil()));
    }

    /** Whether something carries the emulsion; what a material can do besides its first role counts. */
    private static boolean hasEmulsifier(Recipe recipe) {
        return recipe.portions().stream()
                .filter(portion -> portion.level().signum() > 0)
                .anyMatch(portion -> Roles.of(portion.material()).stream().anyMatch(EmulsionGate::carries));
    }

    private static boolean carries(Role role) {
        return Roles.isEmulsifier(role) || role.isOneOf("cationic conditioner", "fatty acid", "primary surfactant");
    }
}
