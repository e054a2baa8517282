package perkilo.swaps.blend;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.model.Book;
import perkilo.swaps.money.LinePrices;
import perkilo.swaps.money.RunsOfFormula;

/** Finds joint swaps in a formula. */
public final class BlendFinder {

    private final Bounds bounds;

    public BlendFinder(Book book, LinePrices prices, RunsOfFormula runs, SolveLinear solver, Bounds bounds) {
        this.bounds = bounds;
    }

    public record Bounds(int mostChanged, BigDecimal spreadingTolerance, BigDecimal hlbBand) {}

    public Bounds bounds() {
        return bounds;
    }

    public List<Blend> find(String formula, @Nullable String function) {
        return List.of();
    }
}
