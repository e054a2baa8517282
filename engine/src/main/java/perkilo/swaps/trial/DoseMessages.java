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

    static String balanceKeepsLevel() {
        return "The line takes the balance (q.s.), so its level stays the same although the active matter differs.";
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
