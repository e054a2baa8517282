package perkilo.reading;

import java.math.BigDecimal;
import java.util.List;

/** What a person reads about formulas and how they are made. */
final class FormulaMessages {

    private FormulaMessages() {}

    static String none() {
        return "No formula was recognised. Add a sheet with the columns Material and % w/w.";
    }

    // levels

    static String noLevel(String material) {
        return "\"" + material + "\" has no % w/w. Type the percentage, or q.s. for the balance.";
    }

    static String noEstimate(String material, String text) {
        return "How much of \"" + material + "\" is used is not known, because its % w/w is \"" + text
                + "\". Type about how much, such as q.s. to pH 5.5 (ca. 0.3), or add a column Estimate %.";
    }

    static String secondBalance(String first) {
        return "This is a second q.s. line; the first is in " + first
                + ". Only one line can take the balance, so type a percentage here, such as 0.3. If the sheet holds several formulas,"
                + " head the column with their names \"Formula\".";
    }

    static String nothingLeft(String formula, String sum) {
        return "The other lines of \"" + formula + "\" already add up to " + sum
                + " %, so nothing is left for q.s. Lower them to 100 % or less.";
    }

    static String tooMuch(String formula, String sum, String difference) {
        return unbalanced(formula, sum, difference, "much");
    }

    static String tooLittle(String formula, String sum, String difference) {
        return unbalanced(formula, sum, difference, "little");
    }

    private static String unbalanced(String formula, String sum, String difference, String how) {
        return "\"" + formula + "\" adds up to " + sum + " %, which is " + difference + " % too " + how
                + ". Correct its lines so that they add up to 100 %.";
    }

    // levels that look like fractions

    static String fractions(String formula, String sum) {
        return "\"" + formula + "\" adds up to " + sum + " %. Are these fractions?" + percentages("2.5");
    }

    static String fractionsBesideBalance(String read, String meant, List<String> others) {
        return readAsPercent(read, others) + ". Are these fractions?" + percentages(meant);
    }

    static String fractionsBesidePercent(String read, String meant, List<String> others, String place, String percent) {
        return readAsPercent(read, others) + ", but " + place + " says " + percent + " %. Are these fractions?"
                + percentages(meant);
    }

    private static String readAsPercent(String read, List<String> others) {
        return read + " is read as " + read + " %"
                + (others.isEmpty() ? "" : ", and likewise in " + String.join(", ", others));
    }

    private static String percentages(String meant) {
        return " Format the cells as percentages, or type " + meant + " for " + meant + " %.";
    }

    // batches

    static String nothingComesOut(BigDecimal vesselMax, BigDecimal holdUp) {
        return "Vessel max of " + vesselMax.toPlainString() + " kg is not above the hold-up of "
                + holdUp.toPlainString() + " kg, so nothing would come out. Correct one of them.";
    }

    static String vesselMinAboveMax(BigDecimal vesselMin, BigDecimal vesselMax) {
        return "Vessel min of " + vesselMin.toPlainString() + " kg is above Vessel max of " + vesselMax.toPlainString()
                + " kg. Correct one of them.";
    }

    static String kind(String text, List<String> words) {
        return "Kind has the word \"" + text + "\", which is not known. Type one or several of these, separated by"
                + " semicolons: " + String.join("; ", words) + ".";
    }

    static String bothKinds(String text) {
        return "Kind is \"" + text + "\", but a product is either leave-on or rinse-off. Take one of them out.";
    }
}
