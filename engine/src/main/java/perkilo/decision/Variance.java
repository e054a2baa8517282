package perkilo.decision;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import perkilo.costing.RunNeeds;

/**
 * Why one run costs more or less than before: the change of the cost of one unit (of one kilogram of bulk that is not
 * filled), split into parts that add up to it.
 *
 * @param title the run in words
 * @param needs the run as it is, or as it was planned
 * @param measure units that it gave, or kilograms of bulk that is not filled
 * @param ofOneBefore the cost of one as it was, in home currency, to 20 decimals
 * @param ofOneAfter the cost of one as it is, to 20 decimals
 * @param parts by kind, in the order in which they were replaced; in home currency
 */
public record Variance(
        String title,
        RunNeeds needs,
        BigDecimal measure,
        BigDecimal ofOneBefore,
        BigDecimal ofOneAfter,
        Map<Part, BigDecimal> parts) {

    /**
     * The parts, in the order in which the inputs of before are replaced by those of after.
     *
     * <p>Quantities are replaced before prices, so that, as in standard costing, a quantity variance is valued at the
     * old price and a price variance counts for the new quantity.
     */
    public enum Part {
        /** Other materials, levels or components. */
        RECIPE("recipe"),
        /** Fill, losses and batches, labour, overhead and quality control. */
        PROCESS("process"),
        /** What suppliers ask for the packs that were bought before. */
        PRICE("price"),
        EXCHANGE_RATE("exchange rate"),
        /** Freight, duty, insurance, the bank's margin, small-order charges. */
        CHARGES("charges"),
        /** Other packs, quantities or suppliers, and what expires of them. */
        PURCHASE_CHOICE("purchase choice"),
        ONE_OFFS("one-offs");

        private final String words;

        Part(String words) {
            this.words = words;
        }

        /** The part in words, as JSON has it. */
        public String words() {
            return words;
        }
    }

    /** Decimals of every amount here: far more than shown, and without the last digits of quotients. */
    private static final int DECIMALS = 20;

    public Variance {
        parts = Collections.unmodifiableMap(new EnumMap<>(parts));
    }

    /** One of the parts. */
    public BigDecimal part(Part part) {
        return parts.getOrDefault(part, BigDecimal.ZERO);
    }

    /**
     * The parts between the states that a cost goes through.
     *
     * @param title the run in words
     * @param states the cost of one before, and after each replacement in the order of the parts
     */
    static Variance of(String title, RunNeeds needs, BigDecimal measure, List<BigDecimal> states) {
        Map<Part, BigDecimal> parts = new EnumMap<>(Part.class);
        Part[] order = Part.values();
        for (int at = 0; at < order.length; at++) {
            parts.put(order[at], rounded(states.get(at + 1)).subtract(rounded(states.get(at))));
        }
        return new Variance(title, needs, measure, rounded(states.get(0)), rounded(states.get(order.length)), parts);
    }

    /** The change of the cost of one: what the parts add up to, exactly. */
    public BigDecimal change() {
        return ofOneAfter.subtract(ofOneBefore);
    }

    private static BigDecimal rounded(BigDecimal amount) {
        return amount.setScale(DECIMALS, RoundingMode.HALF_UP);
    }
}
