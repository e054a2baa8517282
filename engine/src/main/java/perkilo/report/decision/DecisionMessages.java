package perkilo.report.decision;

import java.math.BigDecimal;
import java.time.LocalDate;
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

    // the risk band

    /** The most items that are named. */
    private static final int NAMED = 6;

    /** What a band is made of. */
    static String windows(int windows, int days, LocalDate from, LocalDate to) {
        return Decimals.readable(BigDecimal.valueOf(windows), 0) + " windows of " + days + " days, " + from + " to "
                + to
                + ". They overlap, so they are not independent cases. The past is no forecast. The purchase is kept; these are"
                + " values of the last run.";
    }

    /** Which prices do not move. */
    static String still(List<String> items, int days) {
        return items.isEmpty()
                ? "All prices move as they did from list to list."
                : "Prices that stay, because fewer than three dated lists of that pack reach back " + days + " days: "
                        + named(items) + ".";
    }

    /** There is no band, because a currency has too few days. */
    static String tooFewRates(String currency, int days, int needed) {
        return "No risk band: " + currency + " has rates of " + Counted.of(days, "day") + ", and " + needed
                + " are needed. Add a file with --rates.";
    }

    /** There is no band, because no window fits. */
    static String noWindow(int days, List<String> currencies) {
        return "No risk band: no window of " + days + " days lies within the rates of "
                + String.join(" and ", currencies) + ".";
    }

    /** There is no band, because nothing moves. */
    static String nothingMoves(int days) {
        return "No risk band: everything is paid in your home currency, and no pack that is bought has three dated price lists"
                + " that reach back " + days + " days.";
    }

    private static String named(List<String> items) {
        return items.size() <= NAMED
                ? String.join(", ", items)
                : String.join(", ", items.subList(0, NAMED)) + " and " + (items.size() - NAMED) + " more";
    }

    /**
     * The band in one line, for the page of a product.
     *
     * @param units the size of the run
     * @param low cost of a unit at the 5th percentile
     * @param high the same at the 95th
     */
    static String bandInShort(
            int days,
            BigDecimal low,
            BigDecimal high,
            String currency,
            long units,
            int windows,
            LocalDate from,
            LocalDate to) {
        return "In " + days + " days, if all moves as in the past: " + Decimals.amount(low, 2) + " to "
                + Decimals.amount(high, 2) + " " + currency + " a unit at "
                + Decimals.readable(BigDecimal.valueOf(units), 0)
                + " (nine of ten of " + Decimals.readable(BigDecimal.valueOf(windows), 0) + " overlapping windows, "
                + from
                + " to " + to + "; no forecast).";
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

    // the target cost

    /** Not every set was planned. */
    static String setsLeftOut(String run, int planned, int possible) {
        return run + ": " + Decimals.readable(BigDecimal.valueOf(planned), 0) + " of at most "
                + Decimals.readable(BigDecimal.valueOf(possible), 0)
                + " sets of two or three changes were planned, the most promising ones. A cheaper set can be among the others.";
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
