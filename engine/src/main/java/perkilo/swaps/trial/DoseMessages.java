package perkilo.swaps.trial;

import java.math.BigDecimal;

/** What is said about the level of a material that replaces another. Levels are fractions of the formula. */
final class DoseMessages {

    private DoseMessages() {}

    static String unchanged() {
        return "The level stays as it is.";
    }

    static String noActiveMatter() {
        return "The level stays the same, because no active matter is stated for either material.";
    }

    static String activeMatterUnknown(String material) {
        return "The active matter of " + material + " is not known, so the level stays the same.";
    }

    static String balanceKeepsLevel(BigDecimal wanted) {
        return "The line takes the balance (q.s.), so its level stays the same, although " + TrialWords.percent(wanted)
                + " would do the same work.";
    }

    static String equalLevel() {
        return "The level stays the same.";
    }

    static String equivalentsUnknown(String material) {
        return "The active matter or the equivalent weight of " + material
                + " is not known, so the level stays the same.";
    }

    static String byEquivalents(
            BigDecimal level, BigDecimal active, BigDecimal weight, BigDecimal newActive, BigDecimal newWeight) {
        return ratio(level, active, weight, newActive, newWeight) + ": as many equivalents of acid or base.";
    }

    static String byMoles(
            BigDecimal level, BigDecimal active, BigDecimal weight, BigDecimal newActive, BigDecimal newWeight) {
        return ratio(level, active, weight, newActive, newWeight) + ": it binds as much metal.";
    }

    private static String ratio(
            BigDecimal level, BigDecimal active, BigDecimal weight, BigDecimal newActive, BigDecimal newWeight) {
        return "The new level is " + TrialWords.percent(level) + " × (" + TrialWords.percent(active) + " / "
                + TrialWords.plain(weight) + " g/mol) / (" + TrialWords.percent(newActive) + " / "
                + TrialWords.plain(newWeight) + " g/mol)";
    }

    static String adjustToPh() {
        return "The pH decides the level: add it slowly and stop at the final pH.";
    }

    static String usualLevelUnknown(String material) {
        return "The usual level of " + material + " is not known, so the level stays the same.";
    }

    static String byMidpoint(BigDecimal level, BigDecimal middle, BigDecimal newMiddle) {
        return middle.compareTo(newMiddle) == 0
                ? "The level stays the same, because the usual levels are the same."
                : "The new level is a starting point for the bench: " + TrialWords.percent(level) + " × "
                        + TrialWords.percent(newMiddle) + " / " + TrialWords.percent(middle)
                        + ", by the usual levels of both.";
    }

    static String notLessPreservative(BigDecimal level) {
        return "The new level is " + TrialWords.percent(level)
                + ": as much as before, but no more than its highest usual level. No preservative becomes cheaper by a lower level.";
    }

    static String sameActiveMatter() {
        return "The level stays the same, because the active matter is the same.";
    }

    static String byActiveMatter(BigDecimal level, BigDecimal active, BigDecimal newActive) {
        return "The new level is " + TrialWords.percent(level) + " × " + TrialWords.percent(active) + " / "
                + TrialWords.percent(newActive) + " active matter.";
    }

    static String differenceTaken(String material, BigDecimal before, BigDecimal after) {
        return "No line takes the balance (q.s.), so " + material + " goes from " + TrialWords.percent(before) + " to "
                + TrialWords.percent(after) + ".";
    }

    static String tooLittleLeft(String material, BigDecimal level, BigDecimal needed) {
        return material + " has only " + TrialWords.percent(level) + " to give, but " + TrialWords.percent(needed)
                + " more is needed.";
    }

    static String noBalance(BigDecimal difference) {
        return "The level changes by " + TrialWords.percent(difference) + ", but no line takes the balance (q.s.).";
    }
}
