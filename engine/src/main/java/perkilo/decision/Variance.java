package perkilo.decision;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import perkilo.costing.RunCost;

/**
 * Why one run costs more or less than before: the change of the cost of one unit (of one kilogram of bulk that is not
 * filled), split into parts that add up to it.
 *
 * @param before the run as it was
 * @param after the run of the same product and size as it is
 * @param parts by kind, in the order in which they were replaced; in home currency
 */
public record Variance(RunCost before, RunCost after, Map<Part, BigDecimal> parts) {

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
    static final int DECIMALS = 20;

    public Variance {
        parts = Collections.unmodifiableMap(new EnumMap<>(parts));
    }

    /** One of the parts. */
    public BigDecimal part(Part part) {
        return parts.getOrDefault(part, BigDecimal.ZERO);
    }

    /** The cost of one as it was, to 20 decimals. */
    public BigDecimal ofOneBefore() {
        return rounded(Measure.ofOne(before));
    }

    /** The cost of one as it is, to 20 decimals. */
    public BigDecimal ofOneAfter() {
        return rounded(Measure.ofOne(after));
    }

    /** The change of the cost of one: what the parts add up to, exactly. */
    public BigDecimal change() {
        return ofOneAfter().subtract(ofOneBefore());
    }

    static BigDecimal rounded(BigDecimal amount) {
        return amount.setScale(DECIMALS, RoundingMode.HALF_UP);
    }
}
