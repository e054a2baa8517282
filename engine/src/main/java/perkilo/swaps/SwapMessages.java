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
        return "Nothing was compared, because no other material that can be bought is known to have the role of a line."
                + " Fill in Role on the Materials sheet.";
    }

    static String nothingCheaper() {
        return "No material that fits is cheaper at any run size.";
    }

    static String withoutRole(List<String> materials, int more) {
        return "No role is known for these materials, so they cannot replace others or be replaced: "
                + named(materials, more) + ". Type what each is for in the column Role of the Materials sheet.";
    }

    static String notOffered(List<String> materials, int more) {
        return "These materials have no offer on the costing date, so they are no candidates: " + named(materials, more)
                + ".";
    }

    private static String named(List<String> names, int more) {
        return String.join(", ", names) + (more > 0 ? " and " + more + " more" : "");
    }

    // lines that are not compared, and facts that are missing

    static String keptByWish() {
        return "Keep says yes.";
    }

    static String keptByRole(String role) {
        return "Kept: a product's claim or character depends on its " + role
                + ". Keep = no, or --actives, opens it to the same substance.";
    }

    static String roleUnknown(String material) {
        return "The role of " + material
                + " is not known. Type it in the column Role, of this line or of the material.";
    }

    static String typedRoleUnknown(String word) {
        return "\"" + word + "\" is not a known role. Correct the column Role of this line.";
    }

    static String roleDoesNotFit(String material, List<String> roles) {
        return material + " is known as " + String.join(", ", roles)
                + ", which does not fit this phase and this kind of formula. Type its role in the column Role of this"
                + " line.";
    }

    static String ownFactMissing(List<String> columns) {
        return "Not compared, because a deciding fact of the material itself is not known: "
                + String.join(", ", columns) + ".";
    }

    static String neededFor(String role, String formula) {
        return "It is needed to find another " + role + " for \"" + formula + "\".";
    }

    static String neededToDose(String role, String material) {
        return "It is needed to dose another " + role + " in place of " + material + ".";
    }

    static String inPlaceOf(String role, String material) {
        return "It could be the " + role + " in place of " + material + ".";
    }

    static String typeInRow(List<String> columns, String cell) {
        return "Type " + String.join(", ", columns) + " in the row of " + cell + "; add the column if it is not there.";
    }

    static String addRow(List<String> columns, String material) {
        return "Add a row for " + material + " to the Materials sheet, with " + String.join(", ", columns) + ".";
    }

    // single swaps

    static String notClose(String closeness, String least) {
        return "Not close enough: " + closeness + ", but at least " + least + " of 100 is required.";
    }

    static String cannotBeBought() {
        return "Cannot be bought for every run size.";
    }

    static String savesNothing() {
        return "Saves nothing at any run size.";
    }

    static String savesTooLittle(String least) {
        return "Saves less than " + least + " of the raw material cost at every run size (Least saving on Settings).";
    }

    static String givesItsName(List<String> products, String material) {
        return quoted(products) + " seems to be named after " + material
                + ". If it leaves, the name and the label may mislead.";
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

    // functions

    static String misspelledFunction(String function, List<String> materials, int more, String meant) {
        return noTerm(function, materials, more) + ". Did you mean \"" + meant + "\"?";
    }

    static String ownFunction(String function, List<String> materials, int more) {
        return noTerm(function, materials, more) + ".";
    }

    private static String noTerm(String function, List<String> materials, int more) {
        return "\"" + function + "\" (function of " + quoted(materials, more) + ") is not a term of the EU glossary";
    }

    // roles

    static String functionAsRole(String word, List<String> materials, int more) {
        return "\"" + word + "\" (role of " + quoted(materials, more)
                + ") is a function of the EU glossary, not a role. Type what the material is for more exactly, such as"
                + " emollient ester or O/W emulsifier.";
    }

    static String misspelledRole(String word, List<String> materials, int more, String meant) {
        return notARole(word, materials, more) + " Did you mean \"" + meant + "\"?";
    }

    static String noRole(String word, List<String> materials, int more, List<String> roles) {
        return notARole(word, materials, more) + " Type one of these: " + String.join(", ", roles) + ".";
    }

    private static String notARole(String word, List<String> materials, int more) {
        return "\"" + word + "\" (role of " + quoted(materials, more)
                + ") is not a known role, so nothing is compared for it.";
    }

    private static String quoted(List<String> names, int more) {
        return quoted(names) + (more > 0 ? " and " + more + " more" : "");
    }

    private static String quoted(List<String> names) {
        return "\"" + String.join("\", \"", names) + "\"";
    }
}
