package perkilo.swaps.gate;

import perkilo.model.Material;
import perkilo.swaps.role.Role;
import perkilo.swaps.role.Roles;
import perkilo.swaps.trial.Trial;

/** The gate that asks for the role of what is replaced: only what is put into formulas for the same can replace it. */
final class RoleGate implements Gate {

    @Override
    public String name() {
        return "role";
    }

    @Override
    public Verdict judge(Trial trial) {
        Role role = trial.role();
        Material to = trial.to();
        if (role == null) {
            return Verdict.fail(this, GateMessages.roleUnknown(trial.from().name()));
        }
        Role main = Roles.first(to).orElse(null);
        if (main == null) {
            return Verdict.fail(this, GateMessages.roleUnknown(to.name()));
        }
        if (!Roles.plays(to, role)) {
            return Verdict.fail(this, GateMessages.otherRole(trial.from().name(), role.name(), to.name()));
        }
        return main.equals(role)
                ? Verdict.pass(this, GateMessages.sameRole(role.name()))
                : Verdict.passWithCaution(this, GateMessages.mainRoleDiffers(to.name(), role.name(), main.name()));
    }
}
