package perkilo.reading.arrange;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import perkilo.layouts.ListWords;

/** What a label with one value beside it says about a product, in five languages: {@code Labour rate (€/h)}, 16. */
enum FactWord {
    LABOUR_RATE,
    OVERHEAD,
    HOURS,
    BATCH,
    UNITS,
    FILL,
    PACK,
    DENSITY,
    RETAIL_PRICE,
    VAT,
    RETAILER_MARGIN,
    TARGET_MARGIN,
    PRODUCT,
    FORMULA;

    private static final Map<String, FactWord> KNOWN = load();
    private static final int LONGEST = 60;

    private static Map<String, FactWord> load() {
        Map<String, FactWord> known = new HashMap<>();
        for (List<String> row : ListWords.rows(FactWord.class, "facts.csv")) {
            for (String word : row.get(2).split(";", -1)) {
                known.putIfAbsent(ListWords.key(word), valueOf(row.get(0)));
            }
        }
        return known;
    }

    /**
     * A label.
     *
     * @param word what it is about
     * @param unit the unit behind it, without brackets; empty if it has none
     */
    record Label(FactWord word, String unit) {}

    /** What a label means; empty if its words are not known. */
    static Optional<Label> of(String label) {
        String text = label.strip();
        if (text.length() > LONGEST) {
            return Optional.empty();
        }
        if (text.endsWith(":")) {
            text = text.substring(0, text.length() - 1).strip();
        }
        @Nullable FactWord whole = KNOWN.get(ListWords.key(text));
        if (whole != null) {
            return Optional.of(new Label(whole, signOf(text)));
        }
        int open = Math.max(text.lastIndexOf('('), text.lastIndexOf('['));
        boolean bracketed = open > 0 && (text.endsWith(")") || text.endsWith("]"));
        int cut = bracketed ? open : text.lastIndexOf(' ');
        if (cut <= 0) {
            return Optional.empty();
        }
        String unit = text.substring(cut).replaceAll("[()\\[\\]]", " ").strip();
        @Nullable FactWord word = KNOWN.get(ListWords.key(text.substring(0, cut)));
        return word == null ? Optional.empty() : Optional.of(new Label(word, unit));
    }

    /** What follows the last space, if it has no letters, as in {@code VAT %}. */
    private static String signOf(String text) {
        String last = text.substring(text.lastIndexOf(' ') + 1);
        return last.chars().anyMatch(Character::isLetterOrDigit) ? "" : last;
    }

    /** Whether a value can be one of this fact. */
    boolean isPlausible(@Nullable BigDecimal number) {
        boolean name = this == PRODUCT || this == FORMULA;
        return number == null ? name : !name && number.signum() >= 0;
    }
}
