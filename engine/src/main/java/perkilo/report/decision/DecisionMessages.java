package perkilo.report.decision;

import java.math.BigDecimal;
import java.util.List;
import perkilo.origin.Counted;
import perkilo.origin.Decimals;

/** Sentences on the sheets to decide by. */
final class DecisionMessages {

    private DecisionMessages() {}

    /** What is said of purchases that are planned anew. */
    static String plannedAnew(boolean done) {
        return done
                ? "Planned anew: the cheapest purchase is found again for each change. These are values of the last run."
                : "What a new purchase plan would do after each change is shown by perkilo cost with --sensitivity.";
    }

    // which size

    /**
     * The sizes from which a unit costs less.
     *
     * @param number of them
     * @param falls the largest falls, each such as {@code 13.4 % from 1,079 units on}
     */
    static String steps(int number, List<String> falls) {
        return number == 0
                ? "No size in between makes a unit really cheaper; its cost falls slowly, as more units share fixed work."
                : Counted.of(number, "size") + (number == 1 ? " makes" : " make")
                        + " a unit really cheaper. The largest " + (falls.size() == 1 ? "fall: " : "falls: ")
                        + String.join("; ", falls) + ".";
    }

    /** Sizes with a small fall. */
    static String smallerSteps(int number) {
        return Counted.of(number, "more size") + (number == 1 ? " makes" : " make")
                + " a unit cheaper by less than 0.5 %.";
    }

    /** What is bought instead. */
    static String boughtInstead(String item, String now, String before) {
        return item + ": " + now + " instead of " + before + ".";
    }

    /** The largest size. */
    static String largestSize(long units, String material) {
        return "At your yearly units, up to " + Decimals.readable(BigDecimal.valueOf(units), 0)
                + " units in a run the next run comes before a leftover of " + material
                + " expires. After a larger run, that leftover is lost.";
    }

    static String noYearlyUnits() {
        return "How large a run may be is not known: Yearly units of the product is blank on Products.";
    }

    static String noShelfLife() {
        return "How large a run may be is not known: no material that is bought has a Shelf life months on Materials.";
    }

    static String noTwoSizes() {
        return "No product has two complete runs of different sizes. Name a smallest and a largest size on Runs, or with --units.";
    }

    static String notExact() {
        return "A size can have been missed here: your credit for leftovers depends on their shelf life, or the search was stopped.";
    }

    // scenarios

    /** What a scenario changes. */
    static String scenario(String name, List<String> changes) {
        return name + ": " + String.join("; ", changes) + ".";
    }

    // why it changed

    /** What is compared. */
    static String compared(String from, String to) {
        return "Before: " + from + ". After: " + to + ".";
    }

    static String notCompared(String run) {
        return run + " is not compared, because it is not complete on both sides.";
    }
}
