package perkilo.swaps.gate;

import perkilo.swaps.trial.Trial;

/**
 * One condition that a material must meet to replace another.
 *
 * <p>A new gate is one class that implements this, one line in {@link Gates}, and its sentences in
 * {@code GateMessages}. The default methods say where else it is asked. {@code EveryGateTest} fails if the line is
 * missing.
 */
public interface Gate {

    /** The name that people read; each gate has its own. */
    String name();

    /** Whether the material passes, and why: in full sentences. */
    Verdict judge(Trial trial);

    /** Whether its answer depends on how much of the material is used. */
    default boolean dependsOnLevel() {
        return false;
    }

    /** Whether it can also judge a material where it already is, without a replacement. */
    default boolean judgesPlace() {
        return false;
    }

    /** Whether it compares a level with bounds, whatever the material replaces. */
    default boolean judgesLevel() {
        return false;
    }
}
