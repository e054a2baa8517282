package perkilo.swaps.label;

import java.math.BigDecimal;
import java.util.List;
import perkilo.origin.Decimals;

/** What a person has to decide about a list of ingredients. */
final class LabelMessages {

    private LabelMessages() {}

    static String inciUnknown(String material) {
        return "The INCI name of " + material + " is not known.";
    }

    static String onlyActiveMatterCounts(String material) {
        return material + " is placed by its active matter. What else is in it (mostly water) is not counted.";
    }

    static String sharesUnknown(String material, String inci) {
        return "The shares in " + material + " (" + inci + ") are not known. Each of its ingredients is placed by the"
                + " most that it can be, if they stand by falling share. The supplier's composition decides.";
    }

    static String sharesAboveWhole(String material, String inci) {
        return "The shares in " + material + " (" + inci + ") add up to more than 100 %, so they are not used."
                + " Correct its INCI name.";
    }

    static String sharesBelowWhole(String material, BigDecimal percent) {
        return "The shares in the INCI name of " + material + " add up to " + Decimals.readable(percent, 2)
                + " %. The rest is not in the list.";
    }

    static String allergenOfUnknownShare(List<String> allergens) {
        return "It is not known how much there is of " + String.join(", ", allergens)
                + ". Whether the label has to name "
                + (allergens.size() == 1 ? "it" : "them")
                + " depends on that. Ask for the supplier's allergen statement.";
    }

    static String noAllergensKnown(String material) {
        return "No allergens are known of " + material
                + ", so those that the label has to name may be missing. Ask for the supplier's allergen statement.";
    }
}
