package perkilo.swaps.gate;

import perkilo.model.Names;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.trial.Trial;

/** It does the work of what it replaces. */
final class FunctionGate implements Gate {

    @Override
    public String name() {
        return "function";
    }

    @Override
    public Verdict judge(Trial trial) {
        if (isSameSubstance(trial)) {
            return Verdict.pass(this, "both are %s".formatted(trial.to().inci()));
        }
        String work = Functions.work(trial.from());
        if (work.isEmpty()) {
            return Verdict.fail(
                    this,
                    "the function of %s is not known".formatted(trial.from().name()));
        }
        if (Functions.of(trial.to()).isEmpty()) {
            return Verdict.fail(
                    this, "the function of %s is not known".formatted(trial.to().name()));
        }
        if (!Functions.does(trial.to(), work)) {
            return Verdict.fail(
                    this,
                    "%s is there as %s, and %s is not known for that"
                            .formatted(trial.from().name(), work, trial.to().name()));
        }
        String own = Functions.work(trial.to());
        return own.equals(work)
                ? Verdict.pass(this, "both are %s".formatted(work))
                : Verdict.passWithCaution(
                        this,
                        "%s is %s as well, but mainly %s".formatted(trial.to().name(), work, own));
    }

    /** Whether the two have one name in the ingredient list. */
    static boolean isSameSubstance(Trial trial) {
        String inci = Names.key(trial.from().inci());
        return !inci.isEmpty() && inci.equals(Names.key(trial.to().inci()));
    }
}
