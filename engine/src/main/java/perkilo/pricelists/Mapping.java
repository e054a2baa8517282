package perkilo.pricelists;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How one supplier's lists are read: what they don't say themselves, and whom their names mean. A person confirms it
 * once, and it is kept for the next list.
 *
 * @param supplier as a person calls him
 * @param answers by field, such as {@code decimals}; a field that is asked for and not answered is null
 * @param columns what a column is used for, by its header; null where it is asked for
 * @param names whom a name on the list means, by that name
 */
public record Mapping(
        String supplier,
        Map<String, @Nullable String> answers,
        Map<String, @Nullable String> columns,
        Map<String, NameAnswer> names) {

    static final String DECIMALS = "decimals";
    static final String DATES = "dates";
    static final String CURRENCY = "currency";
    static final String PRICE_PER = "price per";
    static final String BREAKS_IN = "breaks in";
    static final String MINIMUMS_IN = "minimums in";
    static final String MULTI_PACKS = "multi-packs";
    static final String BLANK_ITEMS = "blank items";
    static final String ROW_BASIS = "basis in rows";
    static final String COLUMNS = "columns";

    public Mapping {
        answers = Collections.unmodifiableMap(new LinkedHashMap<>(answers));
        columns = Collections.unmodifiableMap(new LinkedHashMap<>(columns));
        names = Collections.unmodifiableMap(new LinkedHashMap<>(names));
    }

    /** Nothing is known of a supplier yet. */
    static Mapping empty(String supplier) {
        return new Mapping(supplier, Map.of(), Map.of(), Map.of());
    }

    /** The answer to a field; empty where there is none. */
    Optional<String> answer(String field) {
        return Optional.ofNullable(answers.get(field)).filter(words -> !words.isBlank());
    }

    /** What a column is used for, by its header; empty where nothing is said. */
    Optional<String> column(String header) {
        String key = Words.key(header);
        return columns.entrySet().stream()
                .filter(column -> Words.key(column.getKey()).equals(key))
                .map(Map.Entry::getValue)
                .filter(words -> words != null && !words.isBlank())
                .findFirst();
    }

    /**
     * Whom a name on the list means.
     *
     * @param is the name that formulas use; null as long as nobody has confirmed one
     * @param by how it was found, such as {@code INCI}; a person's own answer has none
     * @param perhaps a name that is like it; empty for none
     * @param likeness of that name, from 0 to 1
     */
    public record NameAnswer(@Nullable String is, String by, String perhaps, double likeness) {}
}
