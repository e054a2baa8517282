package perkilo.report.decision;

import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.decision.CostMoves;
import perkilo.decision.ScenarioCosts;
import perkilo.decision.SizeAdvice;

/**
 * What was found out to decide by, besides the costs.
 *
 * @param moves what each complete run depends on
 * @param replanned whether that includes purchases that were planned anew
 * @param sizes the run sizes from which a unit costs less; null if that was not asked for
 * @param scenarios costed beside today; null if there are none
 */
public record Decisions(
        List<CostMoves> moves,
        boolean replanned,
        @Nullable List<SizeAdvice> sizes,
        @Nullable ScenarioCosts scenarios) {

    public Decisions {
        moves = List.copyOf(moves);
        sizes = sizes == null ? null : List.copyOf(sizes);
    }

    /** What the runs depend on with their purchase kept, and nothing else. */
    public static Decisions usual(List<CostMoves> moves) {
        return new Decisions(moves, false, null, null);
    }
}
