package perkilo.swaps.blend;

import java.math.BigDecimal;
import java.util.List;
import perkilo.swaps.trial.TrialWords;

/**
 * What a blend keeps, a sentence for each rule, and why a rule keeps materials out.
 *
 * <p>The reasons are about several materials at once: the sheet has their names in front. Targets and shares of the
 * formula are fractions; tolerances are whole per cent.
 */
final class KeptMessages {

    private KeptMessages() {}

    // levels and active matter

    static String total() {
        return "The total level stays the same.";
    }

    static String activeMatter(String giver) {
        return "The active matter stays the same; " + giver + " takes the difference in level.";
    }

    static String activeMatterAndTotal() {
        return "The active matter stays the same, and so does the total level, because no line takes a difference.";
    }

    static String activeMatterUnknown() {
        return "Their active matter is not known.";
    }

    static String strength(String verb, long percent) {
        return "How much a gram " + verb + " is not known for any material. Instead, the sum of the levels, each as a"
                + " share of its usual maximum, stays within " + percent + " %.";
    }

    // other functions and charges

    static String noOtherFunction() {
        return "The blend has no secondary function to preserve.";
    }

    static String otherFunctions(List<String> functions, long percent) {
        return "The share of the materials with each secondary function (" + String.join(", ", functions)
                + ") falls by no more than " + percent + " % of its value.";
    }

    static String charges(long percent) {
        return "The share of each charge stays within " + percent + " % of the blend, and no new charge comes in.";
    }

    static String chargeUnknown() {
        return "Their charge is not known.";
    }

    static String noOtherOfCharge(String charge) {
        return "The blend contains no other " + charge + " material.";
    }

    // oils and solids

    static String spreading(long percent) {
        return "The shares of light, medium and heavy spreading stay within " + percent
                + " % of the blend. The share of materials that spread in an unknown way falls by no more than that and"
                + " does not rise.";
    }

    static String spreadingUnknown(int unknown, int all) {
        return "Spreading is unknown for " + unknown + " of " + all + " materials, so it is not kept for them.";
    }

    static String viscosity(BigDecimal factor) {
        return "Viscosity, as far as known, stays within a factor of " + TrialWords.plain(factor)
                + " (by logarithms; a guide). Oils of unknown viscosity do not become more.";
    }

    static String liquid() {
        return "Emollients whose melting point, viscosity and spreading class are all unknown keep their level and do not"
                + " come in, because they may be solid.";
    }

    static String maybeSolid() {
        return "It is not known whether they are liquid: no melting point, viscosity or spreading class is stated.";
    }

    static String melting(long celsius) {
        return "The mean melting point, by weight, stays within " + celsius
                + " °C. It is only a guide to body, because a blend does not melt at the mean.";
    }

    // HLB

    static String requiredHlb(BigDecimal band, BigDecimal hlb) {
        return "The HLB that the oils require stays within " + TrialWords.oneDecimal(band) + " of "
                + TrialWords.oneDecimal(hlb) + ".";
    }

    static String requiredHlbHalfKnown(BigDecimal band, BigDecimal hlb, BigDecimal unknown) {
        return "The HLB that the oils require stays within " + TrialWords.oneDecimal(band) + " of "
                + TrialWords.oneDecimal(hlb)
                + ", as far as known. It is not known for oils that make up " + TrialWords.percent(unknown)
                + " of the formula; the band does not cover these, and they do not become more.";
    }

    static String requiredHlbUnknown() {
        return "The HLB that the oils require could not be kept, because it is not known for any of them.";
    }

    static String emulsifierHlb(BigDecimal band, BigDecimal required, BigDecimal now) {
        return "The HLB of the emulsifiers stays within " + TrialWords.oneDecimal(band) + " of "
                + TrialWords.oneDecimal(required) + ", which the oils require (it is " + TrialWords.oneDecimal(now)
                + " now). HLB is only guidance.";
    }

    static String emulsifierHlbAsNow(BigDecimal band, BigDecimal now) {
        return "The HLB of the emulsifiers stays within " + TrialWords.oneDecimal(band) + " of "
                + TrialWords.oneDecimal(now) + ", its present value.";
    }

    static String noBandForUnknown() {
        return "A band around what the oils require could not be applied, because that is not known for all of them.";
    }

    static String requiredHlbTooFar(BigDecimal required) {
        return "A band around what the oils require could not be applied, because they require "
                + TrialWords.oneDecimal(required) + ", which is farther away than the band.";
    }

    static String hlbUnknown() {
        return "Their HLB is not known.";
    }

    static String noHlbKnown() {
        return "No blend is sought, because the HLB of none of the emulsifiers is known.";
    }

    // natural origin

    static String naturalOrigin(BigDecimal target) {
        return "Natural origin content stays at or above " + TrialWords.percent(target) + ".";
    }

    static String naturalOriginMissed(BigDecimal target) {
        return "Natural origin content misses its target of " + TrialWords.percent(target) + " and does not fall.";
    }

    static String naturalOriginHalfKnown(BigDecimal target) {
        return "Natural origin content, as far as known, misses its target of " + TrialWords.percent(target)
                + " and does not fall. Materials with an unknown index keep their level.";
    }
}
