package perkilo.swaps.gate;

import perkilo.swaps.trial.Trial;

/**
 * One condition that a material must meet to stand in for another.
 *
 * <p>A new gate is one class that implements this, and one line in {@link Gates}; what it is asked besides a swap, it
 * says itself. {@code EveryGateTest} fails where the line is missing.
 */
public interface Gate {

    /** What a person calls it; no other gate is called so. */
    String name();

    /** Whether the material passes, and why. */
    Verdict judge(Trial trial);

    /** Whether its answer depends on how much of the material is used. */
    default boolean dependsOnLevel() {
        return false;
    }

    /** Whether it can also say that a material does not fit where it already is, replacing nothing. */
    default boolean judgesPlace() {
        return false;
    }

    /** Whether it holds a level against bounds, whatever the material replaces. */
    default boolean judgesLevel() {
        return false;
    }
}
