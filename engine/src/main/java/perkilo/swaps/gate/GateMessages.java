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

    // solubility

    static String solubilityUnknown(String material) {
        return "It is not known in what " + material + " dissolves.";
    }

    static String dissolvesLike(String solubleIn, String replaced) {
        return dissolves(solubleIn) + ", like " + replaced + ".";
    }

    static String onlyOneIsPowder(String powder, String other) {
        return powder + " is a powder that is dispersed, and " + other + " is not known to be one.";
    }

    static String fitsPhase(String solubleIn, PhaseNature phase) {
        return dissolves(solubleIn) + "; fits the " + phase.words() + ".";
    }

    static String phaseUnknown(String solubleIn, String replaced) {
        return dissolves(solubleIn) + ", unlike " + replaced + ", and it is not known what the phase dissolves.";
    }

    static String doesNotDissolve(String solubleIn, PhaseNature phase) {
        return dissolves(solubleIn) + "; does not dissolve in the " + phase.words() + ".";
    }

    private static String dissolves(String solubleIn) {
        return switch (solubleIn) {
            case SolubilityGate.BOTH -> "Dissolves or disperses in oil and in water";
            case SolubilityGate.POWDER -> "A powder that is dispersed";
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

    static String becomesSofter(String replaced, String material) {
        return replaced + " is solid at room temperature, and " + material
                + " is not known to be, so the product becomes softer.";
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

    // charge

    static String noOppositeCharge(String charge) {
        return "This is " + charge + ", and the formula contains nothing of the opposite charge.";
    }

    static String oppositeCharges(String material, String charge, List<String> others, String opposite) {
        return material + " is " + charge + ", but " + all(others) + " " + opposite + ".";
    }

    static String nothingCationic() {
        return "The charge is not known, and the formula contains nothing cationic.";
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

    static String withinPublishedLimit(BigDecimal level, String limitedAs, BigDecimal max, String source) {
        return "The formula contains " + TrialWords.percent(level) + " " + limitedAs + "; the limit is "
                + TrialWords.percent(max) + " (" + source + ").";
    }

    static String abovePublishedLimit(BigDecimal level, String limitedAs, BigDecimal max, String source) {
        return "The formula contains " + TrialWords.percent(level) + " " + limitedAs + ", but the limit is "
                + TrialWords.percent(max) + " (" + source + ").";
    }

    // preservation

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
}
