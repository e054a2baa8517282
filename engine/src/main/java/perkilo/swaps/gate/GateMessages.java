package perkilo.swaps.gate;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.swaps.trial.PhaseNature;
import perkilo.swaps.trial.TrialWords;

/**
 * What gates say: the reasons and the cautions.
 *
 * <p>Levels are fractions of the formula. A reason whose subject is missing is about the material that is judged.
 */
final class GateMessages {

    private GateMessages() {}

    // role

    static String sameRole(String role) {
        return "Both are put into formulas as " + role + ".";
    }

    static String roleUnknown(String material) {
        return "The role of " + material + " in this formula is not known.";
    }

    static String otherRole(String replaced, String role, String material) {
        return replaced + " is here as " + role + ", and " + material + " is not known to be one.";
    }

    static String mainRoleDiffers(String material, String role, String main) {
        return material + " can be put into formulas as " + role + ", but usually is as " + main + ".";
    }

    // phase

    static String solubilityUnknown(String material) {
        return "It is not known in what " + material + " dissolves.";
    }

    static String dissolvesLike(String solubleIn, String replaced) {
        return dissolves(solubleIn) + ", like " + replaced + ".";
    }

    static String fitsPhase(String solubleIn, PhaseNature phase) {
        return dissolves(solubleIn) + "; fits the " + phase.words() + ".";
    }

    static String meltsInOil() {
        return "An emulsifier or conditioner, which melts or disperses in the oil phase.";
    }

    static String dispersesInOil() {
        return "A thickener, which is dispersed in the oil phase and swells when the phases are joined.";
    }

    static String isSolubilised(PhaseNature phase) {
        return "Soluble in oil; the surfactants take it up in the " + phase.words() + ".";
    }

    static String phaseUnknown(String solubleIn, String replaced) {
        return dissolves(solubleIn) + ", unlike " + replaced + ", and it is not known what the phase dissolves.";
    }

    static String doesNotDissolve(String solubleIn, PhaseNature phase) {
        return dissolves(solubleIn) + "; does not dissolve in the " + phase.words() + ".";
    }

    private static String dissolves(String solubleIn) {
        return switch (solubleIn) {
            case PhaseGate.BOTH -> "Dissolves or disperses in oil and in water";
            case PhaseGate.POWDER -> "A powder that is dispersed";
            default -> "Soluble in " + solubleIn;
        };
    }

    // heat and melting

    static String addedAt(BigDecimal phase) {
        return "Added at " + celsius(phase) + ".";
    }

    static String withstands(BigDecimal max, BigDecimal phase) {
        return "Withstands " + celsius(max) + "; the phase is at " + celsius(phase) + ".";
    }

    static String tooHot(BigDecimal max, BigDecimal phase) {
        return "Withstands only " + celsius(max) + ", but the phase is at " + celsius(phase)
                + ". It would have to be added at cool-down.";
    }

    static String maxTemperatureUnknown(String material, BigDecimal phase) {
        return "The highest process temperature of " + material + " is not known, and the phase is at " + celsius(phase)
                + ".";
    }

    static String phaseTemperatureUnknown() {
        return "The temperature of the phase is not known.";
    }

    static String maybeTooHot(String material, BigDecimal max) {
        return "The temperature of the phase is not known, and " + material + " withstands no more than " + celsius(max)
                + ".";
    }

    static String evaporates(BigDecimal phase) {
        return "It evaporates, and the phase is at " + celsius(phase) + ". It would have to be added at cool-down.";
    }

    static String dissolvesInPhase() {
        return "It dissolves in the phase, so it does not have to melt.";
    }

    static String noMeltingPoint() {
        return "No melting point is stated, so this counts as liquid or soluble.";
    }

    static String melts(BigDecimal melts) {
        return "Melts at " + celsius(melts) + ".";
    }

    static String meltsInPhase(BigDecimal melts, BigDecimal phase) {
        return "Melts at " + celsius(melts) + "; the phase is at " + celsius(phase) + ".";
    }

    static String doesNotMelt(BigDecimal melts, BigDecimal phase) {
        return "Melts at " + celsius(melts) + ", but the phase is at " + celsius(phase) + ".";
    }

    static String maybeDoesNotMelt(String material, BigDecimal melts) {
        return material + " melts at " + celsius(melts) + ", and the temperature of the phase is not known.";
    }

    // compatibility

    static String goesTogether() {
        return "Nothing is known that it does not go together with.";
    }

    static String chargeUnknown(String material, List<String> cationic) {
        return "The charge of " + material + " is not known, and " + all(cationic) + " cationic.";
    }

    private static String all(List<String> names) {
        return String.join(", ", names) + (names.size() == 1 ? " is" : " are");
    }

    // use range and legal maximum

    static String useRangeUnknown(String material) {
        return "The use range of " + material + " is not known.";
    }

    static String useRangeHalfKnown(
            String material, BigDecimal level, @Nullable BigDecimal min, @Nullable BigDecimal max) {
        return "The use range of " + material + " is only known on one side: " + usual(min, max) + ". The level is "
                + TrialWords.percent(level) + ".";
    }

    static String inUseRange(BigDecimal level, @Nullable BigDecimal min, @Nullable BigDecimal max) {
        return "The level is " + TrialWords.percent(level) + "; the usual range is " + usual(min, max) + ".";
    }

    static String outsideUseRange(BigDecimal level, @Nullable BigDecimal min, @Nullable BigDecimal max) {
        return "The level is " + TrialWords.percent(level) + ", but the usual range is " + usual(min, max) + ".";
    }

    private static String usual(@Nullable BigDecimal min, @Nullable BigDecimal max) {
        if (min == null) {
            return "up to " + (max == null ? "?" : TrialWords.percent(max));
        }
        return max == null
                ? TrialWords.percent(min) + " and more"
                : TrialWords.percent(min) + " to " + TrialWords.percent(max);
    }

    static String noLegalMaximum() {
        return "No legal maximum is stated.";
    }

    static String legalMaximumUnknown(String material) {
        return "The legal maximum of " + material + " is not known. Look it up before use.";
    }

    static String withinLegalMaximum(BigDecimal level, BigDecimal max) {
        return "The level is " + TrialWords.percent(level) + "; the legal maximum is " + TrialWords.percent(max) + ".";
    }

    static String aboveLegalMaximum(BigDecimal level, BigDecimal max) {
        return "The level is " + TrialWords.percent(level) + ", but the legal maximum is " + TrialWords.percent(max)
                + ".";
    }

    static String maximumOfOtherKind(String material, BigDecimal typed) {
        return "The legal maximum of " + material + " on the Materials sheet, " + TrialWords.percent(typed)
                + ", is that of another kind of product, so the table of the law counts.";
    }

    static String anhydrousSum(BigDecimal level) {
        return "The level is " + TrialWords.percent(level)
                + "; the formula holds no water, so the sum of oils, butters and waxes decides, not the usual level of"
                + " each.";
    }

    static String lawfulRange(BigDecimal level, BigDecimal max) {
        return "The level is " + TrialWords.percent(level) + "; the law allows up to " + TrialWords.percent(max)
                + " in this kind of product.";
    }

    // emulsion and HLB

    static String noEmulsion() {
        return "No emulsion that could turn.";
    }

    static String emulsionStays(boolean waterInOil) {
        return "The emulsion stays " + type(waterInOil) + ".";
    }

    static String emulsionTurns(boolean before, boolean after) {
        return "The emulsion is " + type(before) + ", and with these emulsifiers it becomes " + type(after) + ".";
    }

    static String otherChargeOfEmulsifier(String material, String charge, String replaced, String oldCharge) {
        return material + " is " + charge + ", and " + replaced + " is " + oldCharge
                + ", so the emulsion would be of another kind.";
    }

    static String noOil() {
        return "Not an oil.";
    }

    static String solidForLiquid(String material, String replaced) {
        return "Of " + material + " and " + replaced + ", one is solid and the other liquid at room temperature.";
    }

    static String viscosityNotCompared() {
        return "The viscosity is not known of both.";
    }

    static String otherThickness(String material, BigDecimal now, BigDecimal old) {
        return material + " has a viscosity of " + plain(now) + " mPa·s instead of " + plain(old)
                + " mPa·s: more than ten times as thick or as thin.";
    }

    static String likeThickness(BigDecimal now, BigDecimal old) {
        return "A viscosity of " + plain(now) + " mPa·s instead of " + plain(old) + " mPa·s.";
    }

    static String oneOfSeveral(String replaced, List<String> others) {
        return replaced + " preserves together with " + String.join(", ", others)
                + ". Only a whole preservative system, with a challenge test of its own, can take their place.";
    }

    static String noEmulsifierLeft() {
        return "No emulsifier is left that can carry the emulsion.";
    }

    private static String type(boolean waterInOil) {
        return waterInOil ? "water-in-oil" : "oil-in-water";
    }

    static String hlbLeavesBand(BigDecimal now, BigDecimal required) {
        return "The emulsifiers would have HLB " + TrialWords.oneDecimal(now) + ", but the oils require "
                + TrialWords.oneDecimal(required)
                + ", and more than 1.5 off is likely to separate. Use --any-hlb if you"
                + " want to see such swaps.";
    }

    // what else changes

    static String noticeableChange() {
        return "No other change is known that people would notice.";
    }

    static String thicker(BigDecimal times) {
        return "It is " + TrialWords.oneDecimal(times) + " times as thick, so the product may become thicker.";
    }

    static String thinner(BigDecimal times) {
        return "It is " + TrialWords.oneDecimal(times) + " times thinner, so the product may become thinner.";
    }

    static String becomesSofter(String replaced, String material) {
        return replaced + " is solid at room temperature, and " + material
                + " is liquid, so the product becomes softer.";
    }

    static String becomesHarder(String replaced, String material) {
        return replaced + " is liquid at room temperature, and " + material
                + " is solid, so the product becomes harder.";
    }

    static String isHarder(String material, String replaced) {
        return material + " is harder than " + replaced + ", so the product may become harder.";
    }

    static String isSofter(String material, String replaced) {
        return material + " is softer than " + replaced + ", so the product may become softer.";
    }

    static String meltsElsewhere(String material, BigDecimal rise) {
        return material + " melts " + TrialWords.oneDecimal(rise.abs()) + " °C "
                + (rise.signum() > 0
                        ? "higher, so the product may become harder."
                        : "lower, so the product may become softer.");
    }

    static String absorbsNow(String material, String replaced) {
        return material + " takes up oil and moisture, and " + replaced
                + " does not: the feel and the flow of the product change.";
    }

    static String absorbsNoMore(String material, String replaced) {
        return replaced + " takes up oil and moisture, and " + material
                + " does not: the feel and the flow of the product change.";
    }

    static String oxidisesSooner(String material, String replaced) {
        return material + " oxidises sooner than " + replaced
                + ": check the antioxidant, and how long the product keeps.";
    }

    static String becomesCloudy(String material, String replaced) {
        return material + " is less clear than " + replaced + ", so the product may become cloudy.";
    }

    static String looksOrSmells(String material, List<String> words) {
        return material + " brings colour or odour: " + String.join(", ", words) + ".";
    }

    static String isSensitiveTo(String material, List<String> words) {
        return material + " is sensitive to: " + String.join(", ", words) + ".";
    }

    static String lessActive(String material, BigDecimal now, BigDecimal before) {
        return material + " brings " + TrialWords.percent(now) + " active matter instead of "
                + TrialWords.percent(before) + ".";
    }

    // preservation

    static String nothingPreserves() {
        return "Nothing would be left that preserves, and the formula holds water.";
    }

    static String noPreservative() {
        return "Not a preservative.";
    }

    static String challengeTestNeeded() {
        return "The preservative system changes: a preservative efficacy (challenge) test is needed before release.";
    }

    static String onlyAsSystem(String material, String replaced, List<String> lost) {
        return material + " is not known to protect against " + String.join(", ", lost) + ", and " + replaced
                + " does. Only a whole preservative system that protects against the same can take its place.";
    }

    static String releasesFormaldehyde(String material, String replaced) {
        return material
                + " preserves by releasing formaldehyde, which some skins react to and the label has to warn of."
                + " It does not take the place of " + replaced + ", which releases none.";
    }

    static String otherPreservingPh(String material, String replaced) {
        return material + " does not preserve in the whole pH range of " + replaced
                + ", and the final pH of the formula is not known.";
    }

    static String preservingLevelUnknown(String material) {
        return "The lowest level at which " + material + " preserves is not known.";
    }

    // pH

    static String noPhRange() {
        return "No pH range is stated.";
    }

    static String preservingPhUnknown(String material) {
        return "The pH range in which " + material + " preserves is not known.";
    }

    static String finalPhUnknown(String material, @Nullable BigDecimal min, @Nullable BigDecimal max) {
        return material + " works " + range(min, max) + ", and the final pH is not known.";
    }

    static String noWater(@Nullable BigDecimal min, @Nullable BigDecimal max) {
        return "Works " + range(min, max) + "; the formula contains no water.";
    }

    static String worksAtPh(@Nullable BigDecimal min, @Nullable BigDecimal max, BigDecimal ph) {
        return "Works " + range(min, max) + "; the final pH is " + TrialWords.plain(ph) + ".";
    }

    static String doesNotWorkAtPh(@Nullable BigDecimal min, @Nullable BigDecimal max, BigDecimal ph) {
        return "Works " + range(min, max) + ", but the final pH is " + TrialWords.plain(ph) + ".";
    }

    private static String range(@Nullable BigDecimal min, @Nullable BigDecimal max) {
        if (min == null) {
            return "up to pH " + (max == null ? "?" : TrialWords.plain(max));
        }
        return "from pH " + TrialWords.plain(min) + (max == null ? " upwards" : " to " + TrialWords.plain(max));
    }

    // required tags and natural origin

    static String noTagRequired() {
        return "No tag is required.";
    }

    static String hasTags(List<String> tags) {
        return "Has what is required: " + String.join(", ", tags) + ".";
    }

    static String lacksTags(String material, List<String> missing) {
        return material + " is not known to be " + String.join(", ", missing) + ".";
    }

    static String naturalOrigin(
            BigDecimal before, BigDecimal unknownBefore, BigDecimal after, BigDecimal unknownAfter) {
        return "Natural origin content is " + content(before, unknownBefore) + " before and "
                + content(after, unknownAfter) + " after.";
    }

    private static String content(BigDecimal known, BigDecimal unknown) {
        return unknown.signum() == 0
                ? TrialWords.percent(known)
                : TrialWords.percent(known) + " (index not known for " + TrialWords.percent(unknown) + ")";
    }

    static String target(BigDecimal target) {
        return "The target is " + TrialWords.percent(target) + ".";
    }

    static String missedBefore() {
        return "It was missed before as well.";
    }

    static String cannotBeShown() {
        return "While an index is not known, it cannot be shown that the target is met.";
    }

    // allergens and HLB

    static String noChange() {
        return "No change.";
    }

    static String allergensEnter(List<String> names) {
        return "New on the label: " + String.join(", ", names) + ".";
    }

    static String allergensLeave(List<String> names) {
        return "No longer on the label: " + String.join(", ", names) + ".";
    }

    static String labelHasToName(List<String> names) {
        return "The label has to name " + String.join(", ", names) + ".";
    }

    static String allergenShareUnknown(String allergen, String material) {
        return "How much " + allergen + " is in " + material + " is not known.";
    }

    static String requiredHlb(BigDecimal now, BigDecimal before, boolean complete) {
        return "The oils require HLB " + insteadOf(now, before, complete);
    }

    static String emulsifierHlb(BigDecimal now, BigDecimal before, boolean complete) {
        return "The emulsifiers have HLB " + insteadOf(now, before, complete);
    }

    private static String insteadOf(BigDecimal now, BigDecimal before, boolean complete) {
        return TrialWords.oneDecimal(now) + " instead of " + TrialWords.oneDecimal(before)
                + (complete ? "." : ", as far as known.");
    }

    private static String celsius(BigDecimal degrees) {
        return TrialWords.plain(degrees) + " °C";
    }

    private static String plain(BigDecimal figure) {
        return figure.stripTrailingZeros().toPlainString();
    }
}
