package perkilo.templates;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import perkilo.model.DeliveryTerm;
import perkilo.model.Fact;
import perkilo.schema.InputColumn;
import perkilo.sheet.SheetNames;
import perkilo.units.Measure;

/** The drop-down lists of columns: the person's own names, or the few words that a column allows. */
final class DropDowns {

    /** The last row that has a drop-down list, counted from one. */
    static final int ROOM = 500;

    private static final Map<String, String> NAMED_ON = Map.of(
            "Supplier", "Suppliers",
            "Material", "Materials",
            "Item", "Materials",
            "Product", "Products",
            "Formula", "Batches");

    private static final Map<String, List<String>> WORDS = words();

    private DropDowns() {}

    /**
     * The list for a column, as a spreadsheet's validation writes it.
     *
     * @param sheet the sheet that the column is on
     * @param headers the headers of each sheet of the workbook
     * @return empty if anything may be typed
     */
    static Optional<String> listFor(String sheet, InputColumn column, Map<String, List<String>> headers) {
        String target = NAMED_ON.get(column.header());
        if (target != null) {
            List<String> there = headers.get(target);
            return there == null || target.equals(sheet) ? Optional.empty() : named(target, column.header(), there);
        }
        List<String> words = WORDS.get(column.header());
        if (words != null) {
            return Optional.of(quoted(words));
        }
        return switch (column.kind()) {
            case UNIT -> Optional.of(quoted(symbols()));
            case PRICE_UNIT -> Optional.of(quoted(symbols()).replaceFirst("\"", "\"pack,"));
            case TERM ->
                Optional.of(quoted(
                        Arrays.stream(DeliveryTerm.values()).map(Enum::name).toList()));
            default -> Optional.empty();
        };
    }

    /** The names in a sheet's key column; an item may also be a component, so other names may be typed. */
    private static Optional<String> named(String sheet, String header, List<String> headers) {
        String wanted = header.equals("Item") ? "Material" : header;
        int column = headers.indexOf(wanted);
        if (column < 0) {
            return Optional.empty();
        }
        String letters = SheetNames.column(column);
        return Optional.of("%s!$%s$2:$%s$%d".formatted(SheetNames.quoted(sheet), letters, letters, ROOM));
    }

    private static Map<String, List<String>> words() {
        Map<String, List<String>> words = new HashMap<>();
        for (Fact fact : Fact.values()) {
            // a list holds one word, so columns of several words have none
            if (fact.kind() == Fact.Kind.WORD && !fact.choices().isEmpty()) {
                words.put(fact.header(), fact.choices());
            }
        }
        words.put("Kind", List.of("leave-on", "rinse-off"));
        return words;
    }

    private static List<String> symbols() {
        return Arrays.stream(Measure.values()).map(Measure::symbol).toList();
    }

    private static String quoted(List<String> words) {
        return words.stream().collect(Collectors.joining(",", "\"", "\""));
    }
}
