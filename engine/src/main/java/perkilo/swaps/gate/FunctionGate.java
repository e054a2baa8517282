package perkilo.swaps.gate;

import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.trial.Trial;

/** The gate that asks for the function of what is replaced. */
final class FunctionGate implements Gate {

    @Override
    public String name() {
        return "function";
    }

    @Override
    public Verdict judge(Trial trial) {
        Material from = trial.from();
        Material to = trial.to();
        if (isSameSubstance(from, to)) {
            return Verdict.pass(this, GateMessages.sameSubstance(to.inci()));
        }
        String work = Functions.work(from);
        if (work.isEmpty()) {
            return Verdict.fail(this, GateMessages.functionUnknown(from.name()));
        }
        if (Functions.of(to).isEmpty()) {
            return Verdict.fail(this, GateMessages.functionUnknown(to.name()));
        }
        if (!Functions.does(to, work)) {
            return Verdict.fail(this, GateMessages.otherFunction(from.name(), work, to.name()));
        }
        String own = Functions.work(to);
        return own.equals(work)
                ? Verdict.pass(this, GateMessages.sameFunction(work))
                : Verdict.passWithCaution(this, GateMessages.mainFunctionDiffers(to.name(), work, own));
    }

    /** Whether this gate is open, without a trial and without words. */
    static boolean isOpen(Material from, Material to) {
        String work = Functions.work(from);
        return isSameSubstance(from, to) || (!work.isEmpty() && Functions.does(to, work));
    }

    /** Whether the two have one name in the ingredient list. */
    static boolean isSameSubstance(Trial trial) {
        return isSameSubstance(trial.from(), trial.to());
    }

    private static boolean isSameSubstance(Material from, Material to) {
        String inci = Names.key(from.inci());
        return !inci.isEmpty() && inci.equals(Names.key(to.inci()));
    }
}
