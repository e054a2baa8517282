package perkilo.swaps.blend;

import java.math.BigDecimal;
import java.util.List;
import perkilo.swaps.trial.TrialWords;

/**
 * What is said about a blend: what to check, which materials are left out, and why there is no blend.
 *
 * <p>The reasons for leaving out are about several materials at once: the sheet has their names in front.
 */
final class BlendMessages {

    private BlendMessages() {}

    // what to check

    static String requiredHlbChanges(BigDecimal now, BigDecimal before) {
        return "The oils require HLB " + TrialWords.oneDecimal(now) + " instead of " + TrialWords.oneDecimal(before)
                + ", as far as known.";
    }

    static String labelHasToName(String allergen) {
        return "The label has to name " + allergen + ".";
    }

    static String lessAntimicrobial(List<String> materials) {
        return "There is less of " + String.join(", ", materials)
                + ", which also works against microbes. A preservative efficacy (challenge) test is needed before"
                + " release.";
    }

    static String chargeUnknown(List<String> materials, String charged) {
        return "The charge of " + String.join(", ", materials) + " is not known, and " + charged + ".";
    }

    static String spreadingUnknown(String material) {
        return "How " + material + " spreads is not known.";
    }

    static String searchEndedEarly() {
        return "The search was ended early, so a cheaper blend within the rules may exist.";
    }

    static String benchSolids() {
        return "Test body, crystals and bloom of the solids at the bench: they do not follow from melting points.";
    }

    static String benchEmulsifiers() {
        return "HLB is only guidance. Test at the bench whether the emulsion holds, and its viscosity.";
    }

    static String benchHumectants() {
        return "How the humectants feel and how much water they bind is not among the known facts.";
    }

    static String benchThickeners() {
        return "Test viscosity and flow at the bench: how much a gram thickens is not among the known facts.";
    }

    static String benchAntioxidants() {
        return "Test at the bench how long the oils keep: how much a gram protects is not among the known facts.";
    }

    static String benchChelators() {
        return "How much a gram binds is not among the known facts. Preservation relies on chelators, so this change needs"
                + " the challenge test too.";
    }

    static String benchSurfactants() {
        return "Test foam, viscosity and mildness at the bench. Active matter, charges and the shares of materials with"
                + " secondary functions are kept, but not how well the blend performs.";
    }

    // materials that are left out

    static String keepsLevel() {
        return "In the blend at a level that stays.";
    }

    static String tooLittleKnown() {
        return "Too little is known about them.";
    }

    static String notOffered() {
        return "They have no offer on the costing date.";
    }

    static String triedNotCheaper() {
        return "Tried, not cheaper.";
    }

    static String triedNoneCheaper() {
        return "Tried, but none of the cheapest blends makes a run cheaper.";
    }

    static String inFormulaAlready() {
        return "Already elsewhere in the formula.";
    }

    static String useRangeUnknown() {
        return "Their use range is not known.";
    }

    static String noUsableLevel() {
        return "Their lowest usual level is above the highest level that is usual and legal.";
    }

    static String noOtherOfCharge(String charge) {
        return "The formula contains no other " + charge + " material.";
    }

    static String notClose(String least) {
        return "Not close enough: less than " + least + " of 100 to every material of the blend.";
    }

    static String alsoPreserves() {
        return "They also preserve, and preservatives are not blended anew for a saving: only a challenge test shows"
                + " whether a preservative system protects the product.";
    }

    static String otherMainRole() {
        return "They can be put into formulas for this, but usually are for something else.";
    }

    static String solid() {
        return "They are solid at room temperature and are not blended with emollients that spread.";
    }

    static String notSolid() {
        return "They are not known to be solid at room temperature, as the materials of the blend are.";
    }

    // blends that are not offered

    static String noLevels(String run) {
        return "At the prices of run " + run + " the search found no levels that keep all these rules.";
    }

    static String blendNotOffered(List<String> materials) {
        return "A blend of " + String.join(", ", materials) + " is not offered.";
    }

    static String savesTooLittle(BigDecimal least) {
        return "It saves less than " + TrialWords.percent(least)
                + " of the raw material cost at every run size (Least saving on Settings).";
    }

    static String cannotBeBought(List<String> materials) {
        return "A blend of " + String.join(", ", materials)
                + " is not offered, because it cannot be bought for every run size.";
    }

    // lines that are not blended

    static String onlyOneLine(String material) {
        return "There is only one line (" + material + "). The single swaps show what could replace it.";
    }

    static String noPreservatives() {
        return "Preservatives are not blended anew for a saving: only a preservative efficacy (challenge) test shows"
                + " whether a preservative system protects the product, and a qualified safety assessor decides.";
    }

    static String noUvFilters() {
        return "UV filters are not blended anew for a saving: only a measurement shows what a combination protects from,"
                + " and a qualified safety assessor decides.";
    }

    static String noFragrances() {
        return "Fragrances are not blended anew: the scent, which they would have to keep, is not among the known facts.";
    }

    static String noColourants() {
        return "Colourants are not blended anew: the shade, which they would have to keep, is not among the known facts.";
    }

    static String noRules(String function) {
        return "No blend is sought, because it is not known what materials with the function \"" + function
                + "\" would have to keep together.";
    }
}
