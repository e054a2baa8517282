package perkilo.swaps.check;

import java.util.List;

/** What a person reads about a formula as it is. */
final class CheckMessages {

    private static final int NAMED = 8;

    private CheckMessages() {}

    /** What the next sentences are about. */
    static String about(String material, String formula, String about) {
        return "Check \"" + material + "\" in " + formula + " (" + about + ").";
    }

    // the law

    static String aboveTypedMaximum(String material, String formula, String level, String max) {
        return about(material, formula, "legal maximum") + " The level is " + level + ", but the legal maximum is "
                + max + ", as typed on the Materials sheet. Local rules and a qualified safety assessor decide.";
    }

    static String typedMaximumDiffers(String material, String typed, String formula, String kind, String most) {
        return "The legal maximum of \"" + material + "\" is typed as " + typed + ", but in \"" + formula + "\" ("
                + kind + ") the table of the law allows " + most
                + ", and that counts. Correct the cell, or leave it blank.";
    }

    // together

    static String tooMuchTogether(String formula, String what, List<String> names, String level, String most) {
        return formula + " contains " + level + " " + what + " (" + some(names) + "), more than the usual " + most
                + ".";
    }

    // what a product needs

    static String noPreservative(String formula) {
        return formula + " holds water, but nothing that is known to preserve. Add a preservative system, or type the"
                + " function of what preserves on the Materials sheet; a challenge test shows whether it works.";
    }

    static String noEmulsifier(String formula) {
        return formula + " holds water and oil, but no emulsifier. It separates, unless it is meant to be shaken.";
    }

    static String onlyCoEmulsifier(String formula, List<String> helpers) {
        return formula + " holds water and oil, but of emulsifiers only what helps others: " + some(helpers)
                + ". Add an emulsifier that carries the emulsion.";
    }

    static String onlyWaterInOil(String formula, List<String> emulsifiers) {
        return formula + " looks like an oil-in-water product, but has only water-in-oil emulsifiers: "
                + some(emulsifiers) + ". It may turn or separate.";
    }

    static String notNeutralised(String material, String formula) {
        return about(material, formula, "neutralising")
                + " It thickens only when a base is added, and the formula contains no base.";
    }

    // claims

    static String tagsNotShown(String formula, List<String> required, List<String> materials) {
        return "Check the tags of " + formula + ". Its products require " + String.join(", ", required)
                + ", but these materials are not known to be so: " + String.join(", ", materials) + ".";
    }

    static String naturalOriginMissed(String formula, String known, String unknown, String target) {
        return "The natural origin content of " + formula + " is " + (unknown.isEmpty() ? "" : "at least ") + known
                + ", but the target is " + target + "."
                + (unknown.isEmpty() ? "" : " The index of another " + unknown + " is not known.");
    }

    // label

    static String noInci(String formula, List<String> materials) {
        return "The ingredient list of " + formula + " lacks the INCI names of " + some(materials)
                + ". Type them on the Materials sheet.";
    }

    static String allergens(String formula, List<String> allergens, boolean rinseOff) {
        return "The label of " + formula + " has to name these fragrance allergens, which are above "
                + (rinseOff ? "0.01 % (rinse-off)" : "0.001 % (leave-on)") + ": " + String.join(", ", allergens) + ".";
    }

    private static String some(List<String> names) {
        List<String> first = names.subList(0, Math.min(NAMED, names.size()));
        int more = names.size() - first.size();
        return String.join(", ", first) + (more > 0 ? " and " + more + " more" : "");
    }

    static String separatesFromOil(String material, String formula) {
        return about(material, formula, "phase")
                + " It dissolves in water only, and the product is of oils without water or an emulsifier, so it would"
                + " separate.";
    }
}
