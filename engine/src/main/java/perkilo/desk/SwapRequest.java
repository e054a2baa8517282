package perkilo.desk;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import perkilo.reading.Sources;
import perkilo.swaps.SwapOptions;

/**
 * A request to look for cheaper materials.
 *
 * @param sources the workbook, and what is read with it
 * @param sizes run sizes instead of the Runs sheet
 * @param only which formulas, materials and functions
 * @param mostChanged the most materials that may be added to a blend, and the most that may be taken out
 * @param closeness the lowest closeness that is offered, 0 to 100
 * @param actives whether actives, filters, fragrances and colourants are opened to the same substance
 * @param anyHlb whether an HLB that leaves its band is only a caution
 * @param apply the swap or blend to write into a new formula; null for none
 * @param benchGrams the size of a trial batch for which a sheet to weigh from is written; null for no such sheet
 * @param today the costing date if none is set
 */
public record SwapRequest(
        Sources sources,
        RunSizes sizes,
        Only only,
        int mostChanged,
        BigDecimal closeness,
        boolean actives,
        boolean anyHlb,
        @Nullable Choice apply,
        @Nullable BigDecimal benchGrams,
        LocalDate today) {

    /** The usual value of {@code mostChanged}. */
    public static final int USUALLY_CHANGED = 2;

    /** Everything in a workbook, with the usual bounds. */
    public static SwapRequest of(Sources sources, RunSizes sizes, LocalDate today) {
        return new SwapRequest(
                sources,
                sizes,
                Only.ALL,
                USUALLY_CHANGED,
                SwapOptions.USUAL_CLOSENESS,
                false,
                false,
                null,
                null,
                today);
    }

    /**
     * Limits of the search.
     *
     * @param formula the name of the only formula; null for all
     * @param material the name of the only material to replace; null for all
     * @param function the only function, as a person types it; null for all
     */
    public record Only(
            @Nullable String formula,
            @Nullable String material,
            @Nullable String function) {

        /** No limits. */
        public static final Only ALL = new Only(null, null, null);
    }
}
