package perkilo.reading;

import java.util.List;
import java.util.StringJoiner;
import perkilo.names.Spelling;

/**
 * What a person reads about names that are unknown, or there twice.
 *
 * <p>{@code meant} is the nearest known name; empty where no name is near.
 */
final class NameMessages {

    private static final String OTHER_LETTERS = ": some letters are of another alphabet or invisible.";

    private NameMessages() {}

    // unknown names

    /** One sentence for all of them, because they have one cause. */
    static String noPricesOfMaterials() {
        return "This material has no price, because no offer was read. See what became of your price sheet.";
    }

    /** One sentence for all of them, because they have one cause. */
    static String noPricesOfComponents() {
        return "This component has no price, because no offer was read. See what became of your price sheet.";
    }

    static String unknownMaterial(String name, String meant) {
        return unknown(
                "The material \"" + name + "\" has neither an offer nor a row in Materials.",
                name,
                meant,
                "Add one of them, or correct the name.");
    }

    static String unknownComponent(String name, String meant) {
        return unknown("The component \"" + name + "\" has no offer.", name, meant, "Add one, or correct the name.");
    }

    static String unknownProduct(String name, String meant) {
        return unknown(
                "The product \"" + name + "\" has no row in Products.", name, meant, "Add one, or correct the name.");
    }

    static String unknownFormula(String name, String meant) {
        return unknown("The formula \"" + name + "\" is on no sheet.", name, meant, "Add it, or correct the name.");
    }

    static String unknownSupplier(String name, String meant) {
        return unknown(
                "The supplier \"" + name + "\" has no row in Suppliers, so their charges are unknown.",
                name,
                meant,
                "Add a row for them.");
    }

    /** A supplier without a row of their own, and what their offers leave unknown if they say some of it. */
    static String partlyKnownSupplier(String name, String meant, List<String> unknown) {
        return unknown(
                "The supplier \"" + name + "\" has no row in Suppliers"
                        + (unknown.isEmpty()
                                ? "."
                                : ", and their offers do not say: " + String.join(", ", unknown) + "."),
                name,
                meant,
                "Add a row for them, or fill these columns of their offers.");
    }

    private static String unknown(String what, String name, String meant, String help) {
        return what + " " + (meant.isEmpty() ? help : didYouMean(name, meant));
    }

    static String didYouMean(String name, String meant) {
        boolean lookAlike = Spelling.skeleton(meant).equals(Spelling.skeleton(name));
        return "Did you mean \"" + meant + "\"?" + (lookAlike ? " The two only look alike" + OTHER_LETTERS : "");
    }

    // names that are found by their INCI names

    /** Which material each name is. */
    static String byInci(List<String> names, List<String> materials) {
        StringJoiner all = new StringJoiner("; ");
        for (int i = 0; i < names.size(); i++) {
            all.add("\"" + names.get(i) + "\" is \"" + materials.get(i) + "\"");
        }
        return "Found by " + (names.size() == 1 ? "its INCI name" : "their INCI names") + ": " + all
                + ". If one of them is not meant, type the material's own name.";
    }

    static String severalGrades(String name, String inci, List<String> materials) {
        return "Nothing is called \"" + name + "\", and several materials have the INCI name " + inci + ": "
                + quoted(materials) + ". Which one is meant?";
    }

    static String otherGrade(String name, String inci, String material) {
        return "Nothing is called \"" + name + "\". \"" + material + "\" has its INCI name, " + inci
                + ", but by its name it may be another grade. Is it meant?";
    }

    /** A question about a material, where it is not on the sheet on which it is answered. */
    static String withAnswer(String question) {
        return question + " Type its name, or answer on the sheet that \"perkilo check BOOK --review\" writes.";
    }

    static String unknownAnswer(String material) {
        return "The material \"" + material + "\" has neither an offer nor a row in Materials. Choose one of the list.";
    }

    static String otherInci(String name, String inci, String other, String where) {
        return "The INCI name of \"" + name + "\" is " + inci + " here, but " + other + " in " + where
                + ". Check which material is meant.";
    }

    private static String quoted(List<String> names) {
        return "\"" + String.join("\", \"", names) + "\"";
    }

    // names that are there twice, or only seem to be

    static String twice(String kind, String name, String first) {
        return "The " + kind + " \"" + name + "\" is listed twice; the first is in " + first + ". Keep one.";
    }

    static String lookAlike(String name, String other, String where) {
        return "\"" + name + "\" looks like \"" + other + "\" in " + where + " but is another name" + OTHER_LETTERS
                + " Type it again.";
    }

    static String componentAndMaterial(String name) {
        return "\"" + name + "\" is a component here, but Materials has it as a raw material. Rename one of them.";
    }
}
