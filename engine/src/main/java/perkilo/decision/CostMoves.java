package perkilo.decision;

import java.util.List;
import perkilo.costing.RunCost;

/**
 * What the cost of one run depends on.
 *
 * @param cost the run
 * @param shares the parts of its cost, the largest first
 * @param swings what each factor does to it, the widest first
 */
public record CostMoves(RunCost cost, List<Share> shares, List<Swing> swings) {

    public CostMoves {
        shares = List.copyOf(shares);
        swings = List.copyOf(swings);
    }
}
