package perkilo.schema;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The range of numbers that a column allows, as a person types them: 2.5 % is 2.5 here. */
public enum Limits {
    ANY("", null, false, null, false),
    ZERO_OR_MORE("zero or more", "0", true, null, false),
    ABOVE_ZERO("above zero", "0", false, null, false),
    ONE_OR_MORE("1 or more", "1", true, null, false),
    UP_TO_HUNDRED("from 0 to 100", "0", true, "100", true),
    BELOW_HUNDRED("from 0 to below 100", "0", true, "100", false),
    PH("from 0 to 14", "0", true, "14", true),
    INDEX("from 0 to 1", "0", true, "1", true);

    private final String words;
    private final @Nullable BigDecimal lowest;
    private final boolean lowestAllowed;
    private final @Nullable BigDecimal highest;
    private final boolean highestAllowed;

    Limits(
            String words,
            @Nullable String lowest,
            boolean lowestAllowed,
            @Nullable String highest,
            boolean highestAllowed) {
        this.words = words;
        this.lowest = lowest == null ? null : new BigDecimal(lowest);
        this.lowestAllowed = lowestAllowed;
        this.highest = highest == null ? null : new BigDecimal(highest);
        this.highestAllowed = highestAllowed;
    }

    /**
     * The limits from a lowest number to a highest one, both allowed.
     *
     * @param lowest the lowest number; empty for none
     * @param highest the highest number; empty for none
     * @throws IllegalArgumentException if there are no words for such limits yet
     */
    static Limits of(String lowest, String highest) {
        for (Limits limits : values()) {
            boolean from = limits.lowest == null
                    ? lowest.isEmpty()
                    : limits.lowestAllowed && limits.lowest.toPlainString().equals(lowest);
            boolean to = limits.highest == null
                    ? highest.isEmpty()
                    : limits.highestAllowed && limits.highest.toPlainString().equals(highest);
            if (from && to) {
                return limits;
            }
        }
        throw new IllegalArgumentException(
                "no limits from \"" + lowest + "\" to \"" + highest + "\"; add them here, with their words");
    }

    /** The limits in a person's words, such as {@code zero or more}; empty if any number is allowed. */
    public String words() {
        return words;
    }

    /** Whether a number, as typed, is inside. */
    public boolean allow(BigDecimal number) {
        if (lowest != null) {
            int below = number.compareTo(lowest);
            if (below < 0 || (below == 0 && !lowestAllowed)) {
                return false;
            }
        }
        if (highest == null) {
            return true;
        }
        int above = number.compareTo(highest);
        return above < 0 || (above == 0 && highestAllowed);
    }

    /**
     * Conditions that numbers outside meet, as a spreadsheet writes them: {@code <0}.
     *
     * @param scale what a typed number is divided by in its cell: 100 for a cell in per cent format
     */
    public List<String> outside(int scale) {
        List<String> conditions = new ArrayList<>();
        if (lowest != null) {
            conditions.add((lowestAllowed ? "<" : "<=") + scaled(lowest, scale));
        }
        if (highest != null) {
            conditions.add((highestAllowed ? ">" : ">=") + scaled(highest, scale));
        }
        return conditions;
    }

    private static String scaled(BigDecimal limit, int scale) {
        return limit.divide(BigDecimal.valueOf(scale)).stripTrailingZeros().toPlainString();
    }
}
