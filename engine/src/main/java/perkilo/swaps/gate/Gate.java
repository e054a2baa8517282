package perkilo.swaps.gate;

import perkilo.swaps.trial.Trial;

/** One condition that a material must meet to stand in for another. */
public interface Gate {

    /** What a person calls it. */
    String name();

    /** Whether the material passes, and why. */
    Verdict judge(Trial trial);
}
