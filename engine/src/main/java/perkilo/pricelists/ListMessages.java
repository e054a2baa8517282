package perkilo.pricelists;

import java.nio.file.Path;
import java.util.List;
import perkilo.origin.Counted;

/** What a person reads about a price list as a whole, and about the mapping of its supplier. */
final class ListMessages {

    private static final String NAME_SUPPLIER = " Name the supplier with --supplier.";

    private ListMessages() {}

    // the list cannot be taken in

    static String noList() {
        return "No price list was recognised in the file."
                + " It needs a row of headers with an item and a price, such as Product, Pack, Price.";
    }

    static String noSupplier() {
        return "The list does not say which supplier it is from." + NAME_SUPPLIER;
    }

    static String noSupplier(String firstLine) {
        return "The list does not say which supplier it is from; its first line is \"" + firstLine + "\"."
                + NAME_SUPPLIER;
    }

    static String severalSuppliers(List<String> suppliers, int more) {
        return "The list is from " + Counted.of(suppliers.size() + more, "supplier") + ": "
                + listed(suppliers, ", ", more)
                + ". Take it in once for each, with --supplier.";
    }

    static String noDate() {
        return "The list has no date. Give the day that it applies from with --quoted YYYY-MM-DD.";
    }

    static String noPrices() {
        return "The list holds no prices. Check that its price column is filled.";
    }

    // rows that contradict each other

    static String secondPrice(String item, String first, String firstItem) {
        return "\"" + item + "\" has a second price for the same pack from the same quantity. The first is in " + first
                + ", for \"" + firstItem + "\". Keep one of them.";
    }

    // names

    static String linked(String listed, String name, String by) {
        return "\"" + listed + "\" is read as \"" + name + "\" (" + (by.isEmpty() ? "your answer" : by) + ").";
    }

    static String unknownAnswer(String listed, String name, List<String> near) {
        String like = near.isEmpty() ? "" : " Similar names: " + String.join(", ", near) + ".";
        return "\"" + listed + "\" should be \"" + name + "\", which is not among your items." + like
                + " Is it a new item? If not, correct the name.";
    }

    static String looksTheSame(String item, String known) {
        return "\"" + item + "\" only looks like \"" + known
                + "\": some letters are from another alphabet or invisible."
                + " Say in the mapping whether it is the same item.";
    }

    static String similarNames(int names, List<String> some) {
        String list = listed(some, "; ", names - some.size());
        return names == 1
                ? "1 name resembles a known item but is not the same: " + list
                        + ". It stays a separate item until you confirm it in the mapping."
                : Counted.of(names, "name") + " resemble known items but are not the same: " + list
                        + ". They stay separate items until you confirm them in the mapping.";
    }

    static String unknownNames(int names, List<String> some) {
        String list = listed(some, ", ", names - some.size());
        return names == 1
                ? "1 name is not among your items: " + list + ". It is kept as the supplier writes it."
                : Counted.of(names, "name") + " are not among your items: " + list
                        + ". They are kept as the supplier writes them.";
    }

    private static String listed(List<String> some, String between, int more) {
        return String.join(between, some) + (more > 0 ? " and " + more + " more" : "");
    }

    // the mapping cannot be read

    static String mappingNotJson(Path file, int line, String why) {
        return file + " cannot be read as JSON near line " + line + ": " + why
                + ". Correct it there, or delete the file and run the command again.";
    }

    static String notAMapping(Path file) {
        return file + " is not a mapping. Delete it and run the command again for a new one.";
    }
}
