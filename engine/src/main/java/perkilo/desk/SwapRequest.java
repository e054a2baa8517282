package perkilo.desk;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import perkilo.reading.Sources;

/**
 * What to look for cheaper materials in.
 *
 * @param sources the workbook, and what is read with it
 * @param sizes run sizes in place of the Runs sheet
 * @param only which formulas, materials and functions
 * @param mostChanged at most so many materials come into a blend, and as many go out
 * @param apply the swap or blend to carry out; null for none
 * @param today the costing date where none is set
 */
public record SwapRequest(
        Sources sources,
        RunSizes sizes,
        Only only,
        int mostChanged,
        @Nullable Choice apply,
        LocalDate today) {

    /** So many materials may come into a blend if nothing else is asked for. */
    public static final int USUALLY_CHANGED = 2;

    /** Everything in a workbook, with the usual bounds. */
    public static SwapRequest of(Sources sources, RunSizes sizes, LocalDate today) {
        return new SwapRequest(sources, sizes, Only.ALL, USUALLY_CHANGED, null, today);
    }

    /**
     * What the search keeps to.
     *
     * @param formula the name of the only formula; null for all
     * @param material the name of the only material to replace; null for all
     * @param function the only function, in a person's word; null for all
     */
    public record Only(
            @Nullable String formula,
            @Nullable String material,
            @Nullable String function) {

        /** Everything. */
        public static final Only ALL = new Only(null, null, null);
    }
}
