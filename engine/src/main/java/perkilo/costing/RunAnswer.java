package perkilo.costing;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Origin;

/**
 * The answer for one run: its cost, or what is known of it and what is missing.
 *
 * @param name the product, or the formula for bulk
 * @param title the run in words: {@code 1,000 × Hand balm}
 * @param isBulk whether bulk is made that is not filled
 * @param origin the cell that asks for it
 * @param cost what is known; all of it if nothing is missing; null if nothing is known
 * @param missing what is not known; none if the cost is complete
 */
public record RunAnswer(
        String name,
        String title,
        boolean isBulk,
        Origin origin,
        @Nullable RunCost cost,
        List<Missing> missing) {

    public RunAnswer {
        requireNonNull(name, "name");
        requireNonNull(title, "title");
        missing = List.copyOf(missing);
        if (cost == null && missing.isEmpty()) {
            throw new IllegalArgumentException("a run without a cost must say what is missing");
        }
    }

    /** The complete cost of a run. */
    static RunAnswer complete(RunCost cost) {
        return partly(cost, List.of());
    }

    /** What is known of a run. */
    static RunAnswer partly(RunCost cost, List<Missing> missing) {
        RunNeeds needs = cost.needs();
        return new RunAnswer(
                needs.name(),
                needs.title(),
                needs.product() == null,
                needs.run().origin(),
                cost,
                missing);
    }

    /** Whether everything is known. */
    public boolean isComplete() {
        return missing.isEmpty();
    }

    /**
     * What the known part of the run costs, in home currency: items used and wasted, work if all of it is known, its
     * share of the one-off costs. Null if nothing is known.
     */
    public @Nullable BigDecimal knownSoFar() {
        if (cost == null) {
            return null;
        }
        return isWorkKnown() ? cost.total() : cost.total().subtract(cost.work().total());
    }

    /** Whether it is complete, or anything of the cost is known. */
    boolean saysAnything() {
        BigDecimal known = knownSoFar();
        return isComplete() || (known != null && known.signum() != 0);
    }

    /** Whether the cost of making and filling is known. */
    public boolean isWorkKnown() {
        return !lacks(Missing.Part.WORK);
    }

    /** Cost of the recipe for one kilogram; empty if a material is missing. */
    public Optional<BigDecimal> rawMaterialPerKg() {
        return lacks(Missing.Part.MATERIALS) ? Optional.empty() : Optional.of(known().rawMaterialPerKg());
    }

    /** Cost of one kilogram of bulk; empty if a material or the work is missing. */
    public Optional<BigDecimal> bulkPerKg() {
        return lacks(Missing.Part.MATERIALS) || lacks(Missing.Part.WORK)
                ? Optional.empty()
                : Optional.of(known().bulkPerKg());
    }

    /** What is missing, in a sentence that names at most so many things. */
    public String lacks(int named) {
        List<String> words = missing.stream().map(Missing::words).distinct().toList();
        return CostMessages.lacks(words.subList(0, Math.min(named, words.size())), Math.max(0, words.size() - named));
    }

    /** The names of what is missing. */
    public List<String> missingNames() {
        return missing.stream().map(Missing::what).distinct().toList();
    }

    private RunCost known() {
        return requireNonNull(cost);
    }

    private boolean lacks(Missing.Part part) {
        return cost == null || missing.stream().anyMatch(one -> one.part() == part);
    }
}
