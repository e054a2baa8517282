package perkilo.report.decision;

import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.costing.RunCost;
import perkilo.decision.CostMoves;
import perkilo.decision.RiskBand;
import perkilo.decision.ScenarioCosts;
import perkilo.decision.SizeAdvice;

/**
 * What was found out to decide by, besides the costs.
 *
 * @param moves what each complete run depends on
 * @param bands what each of these runs could cost some days ahead; none if that was not worked out
 * @param replanned whether that includes purchases that were planned anew
 * @param sizes the run sizes from which a unit costs less; null if that was not asked for
 * @param scenarios costed beside today; null if there are none
 */
public record Decisions(
        List<CostMoves> moves,
        List<RiskBand> bands,
        boolean replanned,
        @Nullable List<SizeAdvice> sizes,
        @Nullable ScenarioCosts scenarios) {

    public Decisions {
        moves = List.copyOf(moves);
        bands = List.copyOf(bands);
        sizes = sizes == null ? null : List.copyOf(sizes);
    }

    /** The band of a run; null if it was not worked out. The same run is meant, not one with equal figures. */
    @SuppressWarnings("ReferenceEquality")
    public @Nullable RiskBand band(RunCost cost) {
        for (RiskBand band : bands) {
            if (band.cost() == cost) {
                return band;
            }
        }
        return null;
    }

    /** What the runs depend on with their purchase kept, and nothing else. */
    public static Decisions usual(List<CostMoves> moves) {
        return new Decisions(moves, List.of(), false, null, null);
    }
}
