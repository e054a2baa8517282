package perkilo.decision;

import java.time.LocalDate;
import java.util.List;

/** What a person reads about what runs really took. */
final class ActualMessages {

    private static final int NAMED = 8;

    private ActualMessages() {}

    static String unknownProduct(String product) {
        return "There is no product \"" + product + "\" on Products, so this row is not held against a plan.";
    }

    static String whichSize(String product) {
        return "Units planned is blank, and Runs does not have exactly one size of \"" + product
                + "\". Type the units that the run was planned for.";
    }

    static String differs(String column, String run, String first) {
        return column + " of " + run + " differs from " + first + ". It is for the whole run: type it once.";
    }

    static String otherUnit(String item, String symbol, boolean material) {
        String wanted = material ? "kg" : "pieces";
        return "The quantity of \"" + item + "\" is in " + symbol + ", but it is counted in " + wanted + ". Type it in "
                + wanted + ".";
    }

    static String needsDensity(String item, String symbol) {
        return "The quantity of \"" + item + "\" is in " + symbol
                + ", and its density is not known. Type its weight, or the density on Materials.";
    }

    static String noRate(String currency, LocalDate day) {
        return "There is no exchange rate for " + currency + " on or before " + day
                + ", so this run is not held against its plan. Add one to Rates, or give a file with --rates.";
    }

    static String faulty(String run) {
        return run + " is not held against its plan, because one of its rows has an error.";
    }

    static String notPlanned(String run, String item) {
        return "\"" + item + "\" is not in the plan of " + run + ", so all of its cost counts as recipe.";
    }

    static String notPlannedWithoutPrice(String run, String item) {
        return "\"" + item + "\" is not in the plan of " + run
                + ", and Amount paid is blank, so its cost is not known.";
    }

    static String asPlanned(String run, List<String> items) {
        String named = items.size() <= NAMED
                ? String.join(", ", items)
                : String.join(", ", items.subList(0, NAMED)) + " and " + (items.size() - NAMED) + " more";
        return run + ": nothing is written down for " + named + ", so the plan counts for the units made.";
    }

    static String asPlannedPrice(String item) {
        return "Amount paid of \"" + item + "\" is blank, so the planned price counts.";
    }

    static String hoursAsPlanned(String run) {
        return run + ": Hours is blank, so the hours of the plan count.";
    }

    static String madeAsPlanned(String run) {
        return run + ": Units made is blank, so the units planned count.";
    }
}
