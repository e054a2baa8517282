package perkilo.swaps;

import java.util.List;

/** What a person reads about cheaper materials: the search, what comes of it, and the formulas as they are. */
final class SwapMessages {

    private static final int NAMED = 4;

    private SwapMessages() {}

    // on every list of swaps

    static String candidateOnly() {
        return "A swap is a candidate for the bench, not a release.";
    }

    static String benchBatch() {
        return "Make a bench batch; check pH and viscosity the next day, then stability, preservative efficacy and"
                + " compatibility with the pack.";
    }

    static String assessAnew() {
        return "A qualified safety assessor has to do the safety assessment anew; local rules decide.";
    }

    static String claimsStayCosmetic() {
        return "Claims stay cosmetic: what a product does to appearance.";
    }

    static String traitsFromSheet() {
        return "Traits are those of the materials sheet; the supplier's specification and certificate decide.";
    }

    // the search

    static String noRun(String formula) {
        return "No run makes \"" + formula + "\", so swaps in it cannot be costed. Add a run for it to the Runs sheet.";
    }

    static String notRead(String formula, String cell) {
        return "Swaps in \"" + formula + "\" are not looked for, because " + cell + " has an error.";
    }

    static String runNotComplete(String run, List<String> missing) {
        return "Swaps are not costed for the run " + run + ", because it is not complete: "
                + String.join("; ", missing.subList(0, Math.min(NAMED, missing.size()))) + ".";
    }

    static String nothingCompared() {
        return "Nothing was compared, because no other material that can be bought is known to have the function of a"
                + " line. Fill in Functions on the Materials sheet.";
    }

    static String nothingCheaper() {
        return "No material that fits is cheaper at any run size.";
    }

    static String withoutFunction(List<String> materials, int more) {
        return "No function is known for these materials, so they cannot replace others or be replaced: "
                + named(materials, more) + ".";
    }

    static String notOffered(List<String> materials, int more) {
        return "These materials have no offer on the costing date, so they are no candidates: " + named(materials, more)
                + ".";
    }

    private static String named(List<String> names, int more) {
        return String.join(", ", names) + (more > 0 ? " and " + more + " more" : "");
    }

    // single swaps

    static String notClose(String closeness, String least) {
        return "Not close enough: " + closeness + " of 100, but at least " + least + " is required.";
    }

    static String cannotBeBought() {
        return "Cannot be bought for every run size.";
    }

    static String savesNothing() {
        return "Saves nothing at any run size.";
    }

    static String boughtAlready(List<String> formulas) {
        return "Already bought for " + quoted(formulas)
                + ". Ordered together it may cost less than here, because each run is planned alone.";
    }

    // a swap as a formula

    static String typeInProduct(String product, String formula) {
        return "To cost \"" + product + "\" with the new formula, type \"" + formula + "\" as its formula in this row.";
    }

    static String typeInRun(String formula) {
        return "To cost the bulk of the new formula, type \"" + formula + "\" as the formula of this run.";
    }

    static String typeAnywhere(String formula) {
        return "To cost the new formula, type \"" + formula + "\" as the formula of a product or of a run.";
    }

    static String pricedElsewhere(String material, String formula, List<String> files) {
        return "\"" + material + "\" in \"" + formula + "\" is not offered in the workbook, only in "
                + String.join(", ", files) + ". Use the same --prices when you cost the formula.";
    }

    // formulas as they are

    static String checkPlace(String material, String formula, String gate) {
        return "Check \"" + material + "\" in " + formula + " (" + gate + ").";
    }

    static String assessorDecides() {
        return "Local rules and a qualified safety assessor decide.";
    }

    static String tagsNotShown(String formula, List<String> required, List<String> materials) {
        return "Check the tags of " + formula + ". Its products require " + String.join(", ", required)
                + ", but these materials are not known to be so: " + String.join(", ", materials) + ".";
    }

    static String naturalOriginMissed(String formula, String known, String unknown, String target) {
        return "The natural origin content of " + formula + " is " + (unknown.isEmpty() ? "" : "at least ") + known
                + ", but the target is " + target + "."
                + (unknown.isEmpty() ? "" : " The index of another " + unknown + " is not known.");
    }

    // functions

    static String misspelledFunction(String function, List<String> materials, int more, String meant) {
        return noTerm(function, materials, more) + ", so no other material is compared for it. Did you mean \"" + meant
                + "\"?";
    }

    static String ownFunction(String function, List<String> materials, int more) {
        return noTerm(function, materials, more) + ". It is only compared with materials that have the same word.";
    }

    private static String noTerm(String function, List<String> materials, int more) {
        return "\"" + function + "\" (function of " + quoted(materials) + (more > 0 ? " and " + more + " more" : "")
                + ") is not a term of the EU glossary";
    }

    private static String quoted(List<String> names) {
        return "\"" + String.join("\", \"", names) + "\"";
    }

    // a formula with a swap

    static String levelBefore(String percent) {
        return "before: " + percent;
    }

    static String inPlaceOf(String material) {
        return "new, in place of " + material;
    }

    static String cameIn() {
        return "new";
    }
}
