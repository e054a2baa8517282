package perkilo.swaps;

import java.math.BigDecimal;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;

/**
 * What a search looks for.
 *
 * @param formula only in this formula; null for all
 * @param material only in place of this material; null for all
 * @param function only for lines with this function; null for all
 * @param leastCloseness the lowest closeness, at worst, that is offered, 0 to 100
 * @param actives whether lines that are kept because of their role are opened to the same substance
 * @param blends whether joint swaps are sought as well
 * @param mostChanged at most so many materials enter a blend, and as many leave it
 * @param spreadingTolerance how much the shares of light, medium and heavy spreading may move, as a fraction of the
 *     blend
 * @param hlbBand how far required HLB may move
 * @param progress receives how many candidates are costed, and of how many
 */
public record SwapOptions(
        @Nullable String formula,
        @Nullable String material,
        @Nullable String function,
        BigDecimal leastCloseness,
        boolean actives,
        boolean blends,
        int mostChanged,
        BigDecimal spreadingTolerance,
        BigDecimal hlbBand,
        BiConsumer<Integer, Integer> progress) {

    /** The usual value of {@code leastCloseness}. Own choice. */
    public static final BigDecimal USUAL_CLOSENESS = BigDecimal.valueOf(60);

    /**
     * Everything, with the usual bounds. A closeness of 60 at worst, two materials, a tenth of the blend and 1 in HLB
     * are own choices.
     */
    public static SwapOptions usual() {
        return new SwapOptions(
                null,
                null,
                null,
                USUAL_CLOSENESS,
                false,
                true,
                2,
                new BigDecimal("0.1"),
                BigDecimal.ONE,
                (done, all) -> {});
    }

    /** The same for one formula, material and function only; null for all. */
    public SwapOptions only(@Nullable String inFormula, @Nullable String ofMaterial, @Nullable String ofFunction) {
        return new SwapOptions(
                inFormula,
                ofMaterial,
                ofFunction,
                leastCloseness,
                actives,
                blends,
                mostChanged,
                spreadingTolerance,
                hlbBand,
                progress);
    }

    /** The same, reporting progress to a listener. */
    public SwapOptions telling(BiConsumer<Integer, Integer> listener) {
        return new SwapOptions(
                formula,
                material,
                function,
                leastCloseness,
                actives,
                blends,
                mostChanged,
                spreadingTolerance,
                hlbBand,
                listener);
    }

    /** The same, with or without joint swaps. */
    public SwapOptions withBlends(boolean sought) {
        return new SwapOptions(
                formula,
                material,
                function,
                leastCloseness,
                actives,
                sought,
                mostChanged,
                spreadingTolerance,
                hlbBand,
                progress);
    }

    /** The same, with so many materials that may come into a blend, and as many that may leave it. */
    public SwapOptions changing(int materials) {
        return new SwapOptions(
                formula,
                material,
                function,
                leastCloseness,
                actives,
                blends,
                materials,
                spreadingTolerance,
                hlbBand,
                progress);
    }

    /** The same with another lowest closeness, 0 to 100. */
    public SwapOptions atLeast(BigDecimal closeness) {
        return new SwapOptions(
                formula,
                material,
                function,
                closeness,
                actives,
                blends,
                mostChanged,
                spreadingTolerance,
                hlbBand,
                progress);
    }

    /** The same, with actives opened to the same substance or not. */
    public SwapOptions withActives(boolean opened) {
        return new SwapOptions(
                formula,
                material,
                function,
                leastCloseness,
                opened,
                blends,
                mostChanged,
                spreadingTolerance,
                hlbBand,
                progress);
    }
}
