package perkilo.swaps.gate;

import perkilo.swaps.trial.Dose;
import perkilo.swaps.trial.Trial;

/** The gate that lets a dose through when the formula still adds up: the q.s. line has enough to give. */
final class DoseGate implements Gate {

    @Override
    public String name() {
        return "dose";
    }

    @Override
    public boolean dependsOnLevel() {
        return true;
    }

    @Override
    public Verdict judge(Trial trial) {
        Dose dose = trial.dose();
        return new Verdict(this, dose.balanced(), dose.why(), dose.cautions());
    }
}
