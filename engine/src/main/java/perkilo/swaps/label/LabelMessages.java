package perkilo.swaps.label;

/** What a person has to decide about a list of ingredients. */
final class LabelMessages {

    private LabelMessages() {}

    static String inciUnknown(String material) {
        return "The INCI name of " + material + " is not known.";
    }

    static String onlyActiveMatterCounts(String material) {
        return material + " is placed by its active matter. What else is in it (mostly water) is not counted.";
    }

    static String sharesUnknown(String inci) {
        return "The shares of " + inci + " are not known, so they stay together. The supplier's composition decides.";
    }
}
