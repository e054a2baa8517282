package perkilo.desk;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Counted;

/** What a person reads about a request that a service cannot carry out, or about its result as a whole. */
final class DeskMessages {

    private DeskMessages() {}

    /** That amounts in two currencies are not compared. */
    static String otherHome(String before, String after) {
        return "The two have different home currencies, " + before + " and " + after
                + ", so their costs cannot be compared. Set the same Home currency in both.";
    }

    /** That there is nothing to compare. */
    static String nothingToCompare() {
        return "No run of the same product and size is complete on both sides, so nothing can be compared. See Runs, or name"
                + " sizes with --units.";
    }

    /** That no product has a target. */
    static String noTarget() {
        return "No product has both a target retail price and a target margin. Fill in Target retail price and Target margin %"
                + " on Products.";
    }

    /** That a product is left out. */
    static String noTargetOf(String product, String column) {
        return product + " has no target cost, because " + column + " is blank.";
    }

    // runs

    static String noRun() {
        return "There is no run to cost. Fill in the Runs sheet (Product, Units), or use --units, which needs a Products"
                + " sheet, or --batch-kg, which needs only a formula.";
    }

    // what swaps are asked for

    static String noFormula(String formula) {
        return "There is no formula \"" + formula + "\". Check its name.";
    }

    static String noMaterial(String material) {
        return "There is no material \"" + material + "\". Check its name.";
    }

    static String inciOfMaterial(String inci, List<String> materials) {
        return "There is no material \"" + inci + "\", but it is the INCI name of " + String.join(", ", materials)
                + ". Type the material's own name.";
    }

    static String misspeltFunction(String typed, String near) {
        return noMaterialFor(typed) + " Did you mean " + near + "?";
    }

    static String unknownFunction(String typed, List<String> known) {
        return noMaterialFor(typed)
                + (known.isEmpty()
                        ? " The Materials sheet names no functions. Fill in its column Functions."
                        : " The Materials sheet has: " + String.join(", ", known) + ".");
    }

    private static String noMaterialFor(String function) {
        return "No material has the function \"" + function + "\".";
    }

    // rates

    /**
     * That no rate is known.
     *
     * @param first the first day of the table; null where it is empty
     */
    static String noRate(String from, String to, LocalDate day, @Nullable LocalDate first) {
        return "There is no rate from " + from + " to " + to + " on or before " + day + ". "
                + (first == null ? "The table has no rates." : "The table begins on " + first + ".");
    }

    static String oldRate(String from, String to, long days, LocalDate asked) {
        return "The rate from " + from + " to " + to + " is " + Counted.of(days, "day") + " older than " + asked
                + ". Take in newer rates.";
    }

    static String moreRatesDiffer(int count) {
        return Counted.of(count, "more rate differs", "more rates differ") + " from the table.";
    }

    static String notRates(String address, String fileName) {
        return address + " did not send exchange rates. Get " + fileName
                + " in another way and take it in with \"perkilo rates FILE\".";
    }

    static String asAnswered(String answer) {
        return "This is read with your answer \"" + answer + "\".";
    }

    static String noAnswer(String answer) {
        return "The answer \"" + answer + "\" is not understood. Choose one of the list.";
    }

    static String ofOtherFile() {
        return "This is about another file.";
    }

    static String ratesWait(int open, Path review) {
        return "Nothing is taken in yet: " + Counted.of(open, "question") + " about these rates "
                + (open == 1 ? "is" : "are") + " open. Open " + review
                + ", answer in the yellow cells, save and close it, and run the same command again.";
    }

    // portfolios

    static String noBookIn(Path folder) {
        return folder + " holds no workbook (.xlsx or .xlsm) to cost.";
    }

    static String stopped() {
        return "The work was stopped before this workbook was costed. Run it again.";
    }

    static String fault(String what) {
        return "This is a fault in Perkilo, not in your file: " + what
                + ". Cost this workbook alone with --debug and report what it prints.";
    }

    // new workbooks

    static String alreadyThere(Path book) {
        return book + " already exists and is not changed. Choose another name.";
    }

    static String noFolder(Path book) {
        return "The folder of " + book + " does not exist. Create it first.";
    }

    static String writeProtected(Path book) {
        return book + " cannot be written because its folder is read-only. Choose another folder.";
    }

    static String templateMissing(String template) {
        return "The template " + template + " is missing from this copy of Perkilo. Install Perkilo again.";
    }

    // formulas with a swap

    static String changedFormulaStays(String sheet) {
        return "The sheet \"" + sheet + "\" has been changed since it was written, so it stays as it is. The formula is"
                + " written to a new sheet.";
    }

    static String leftBlank(String formula, List<String> columns) {
        return "In \"" + formula + "\" the cells of " + String.join(", ", columns)
                + " are blank where another material came in. Type what is right for the new material.";
    }

    static String noActualToCompare() {
        return "No run of Actuals can be held against its plan. Each needs a product of Products and Units planned.";
    }
}
