package perkilo.layouts;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How one supplier's lists are read: what they don't say themselves, and which items their names mean. A person
 * confirms it once, and it is kept for the supplier's next list.
 *
 * @param supplier the name that a person uses
 * @param answers by field, such as {@code decimals}; null for a question without an answer yet
 * @param columns what a column is used for, by its header; null for a question without an answer yet
 * @param names which item a name on the list means, by that name
 */
public record Mapping(
        String supplier,
        Map<String, @Nullable String> answers,
        Map<String, @Nullable String> columns,
        Map<String, NameAnswer> names) {

    public static final String DECIMALS = "decimals";
    public static final String DATES = "dates";
    public static final String CURRENCY = "currency";
    public static final String PRICE_PER = "price per";
    public static final String BREAKS_IN = "breaks in";
    public static final String MINIMUMS_IN = "minimums in";
    public static final String MULTI_PACKS = "multi-packs";
    public static final String BLANK_ITEMS = "blank items";
    public static final String ROW_BASIS = "basis in rows";
    public static final String GALLONS = "gallons";
    public static final String COLUMNS = "columns";
    public static final String SIZED_COLUMNS = "columns of quantities";
    public static final String FIRST_DAY = "first day";
    public static final String LAST_DAY = "last day";
    public static final String PACK_COLUMN = "pack column";
    public static final String PACK_UNIT = "unit of packs";

    public Mapping {
        answers = Collections.unmodifiableMap(new LinkedHashMap<>(answers));
        columns = Collections.unmodifiableMap(new LinkedHashMap<>(columns));
        names = Collections.unmodifiableMap(new LinkedHashMap<>(names));
    }

    /** Where the answer for the decimal mark of one column is kept. */
    static String decimalsIn(String header) {
        return DECIMALS + " in " + ListWords.tidy(header);
    }

    /** The mapping of a supplier before their first list. */
    public static Mapping empty(String supplier) {
        return new Mapping(supplier, Map.of(), Map.of(), Map.of());
    }

    /** The answer to a field; empty if there is none. */
    public Optional<String> answer(String field) {
        return Optional.ofNullable(answers.get(field)).filter(words -> !words.isBlank());
    }

    /** What a column is used for, by its header; empty if the mapping does not say. */
    public Optional<String> column(String header) {
        String key = ListWords.key(header);
        return columns.entrySet().stream()
                .filter(column -> ListWords.key(column.getKey()).equals(key))
                .map(Map.Entry::getValue)
                .filter(words -> words != null && !words.isBlank())
                .findFirst();
    }

    /**
     * Which item a name on the list means.
     *
     * @param is the name that formulas use; null until a person confirms one
     * @param by how it was found, such as {@code INCI}; empty for a person's own answer
     * @param perhaps a similar known name; empty if there is none
     * @param likeness of that name, from 0 to 1
     */
    public record NameAnswer(@Nullable String is, String by, String perhaps, double likeness) {}
}
