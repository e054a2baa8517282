package perkilo.reading;

import java.time.LocalDate;
import java.util.List;
import perkilo.origin.Counted;

/** What a person reads about stock, goods on order, demand and runs. */
final class PlanMessages {

    private PlanMessages() {}

    // items that are not counted

    static String unknownStock(String item, String meant) {
        return "The item \"" + item + "\" is neither offered nor used, so this stock is not counted. "
                + NameMessages.didYouMean(item, meant);
    }

    static String strangeStock(List<String> items, int more) {
        return "Stock of items that are neither offered nor used is not counted: "
                + String.join(", ", items)
                + (more > 0 ? " and " + more + " more." : ".");
    }

    // units

    static String componentNotInPieces(String item, String unit) {
        return "The stock of \"" + item + "\" is in " + unit
                + ", but it is a component. Type the number of pieces, with each as the unit.";
    }

    static String materialInPieces(String item) {
        return "The stock of \"" + item + "\" is in pieces, but it is a raw material. Use a unit such as kg.";
    }

    static String noDensity(String item, String unit) {
        return "The stock of \"" + item + "\" is in " + unit
                + ", but its density is unknown. Fill Density g/mL in Materials.";
    }

    // days

    static String expired(String item, LocalDate expires, LocalDate costingDate) {
        return "\"" + item + "\" expired on " + expires + ", before the costing date " + costingDate
                + ", so it is not used.";
    }

    static String expiresBeforeArrival(String item, LocalDate expires, LocalDate expected) {
        return "\"" + item + "\" expires on " + expires + ", before it is expected on " + expected
                + ", so it is not used. Correct one of the two days.";
    }

    static String overdue(String item, LocalDate expected, LocalDate costingDate) {
        return "\"" + item + "\" was expected on " + expected + ", and the costing date is " + costingDate
                + ", so it is counted as in stock from this month on."
                + " Type a new date, or clear it once the goods are on the shelf.";
    }

    static String overdue(List<String> cells, int more, LocalDate costingDate) {
        boolean one = cells.size() + more == 1;
        return "The day of delivery is not after the costing date " + costingDate + " in " + String.join(", ", cells)
                + (more > 0 ? " and " + Counted.of(more, "more cell", "more cells") : "") + ", so "
                + (one ? "this lot is" : "these lots are")
                + " counted as on the shelf. Type a new date for goods that are still to come, and clear the date of"
                + " goods that are there.";
    }

    static String noDayOnOrder() {
        return "Expected on is blank on a sheet of goods on order. Type the day that they are expected, or move them to"
                + " Stock if they are on the shelf.";
    }

    // several tables of one kind

    static String addedUp(String kind, List<String> tables) {
        return severalTables(kind, "added up", tables);
    }

    static String allCosted(String kind, List<String> tables) {
        return severalTables(kind, "all costed", tables);
    }

    private static String severalTables(String kind, String how, List<String> tables) {
        return kind + ": " + Counted.of(tables.size(), "table") + " are read and " + how + ": "
                + String.join(", ", tables)
                + ". If one of them is old or a draft, hide its sheet or delete its row of headers.";
    }

    static String actualOfNothing() {
        return "Item is blank, but there is a quantity or an amount. Name the material or component.";
    }
}
