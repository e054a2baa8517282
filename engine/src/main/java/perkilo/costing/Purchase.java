package perkilo.costing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import perkilo.purchasing.LineCost;
import perkilo.purchasing.OrderCost;
import perkilo.purchasing.PlanCost;
import perkilo.purchasing.PurchasePlan;
import perkilo.purchasing.PurchaseProblem;

/**
 * The purchases for a run.
 *
 * @param problem the needs and who sells them
 * @param listings the offers of the problem's quotes, by quote index
 * @param plan the chosen purchases
 * @param cost the cost of the plan
 * @param bound no purchase costs less than this, in home currency
 * @param proven whether the plan is proven cheapest
 */
public record Purchase(
        PurchaseProblem problem,
        List<Listing> listings,
        PurchasePlan plan,
        PlanCost cost,
        BigDecimal bound,
        boolean proven) {

    public Purchase {
        listings = List.copyOf(listings);
    }

    /** The lines that buy one need. */
    public List<LineCost> linesOf(int need) {
        return linesByNeed().get(need);
    }

    /** The lines that buy each need, by the index of the need. */
    List<List<LineCost>> linesByNeed() {
        List<List<LineCost>> byNeed =
                new ArrayList<>(Collections.nCopies(problem.needs().size(), List.of()));
        for (OrderCost order : cost.orders()) {
            for (LineCost line : order.lines()) {
                int need = problem.quotes().get(line.line().quote()).item();
                byNeed.set(need, with(byNeed.get(need), line));
            }
        }
        return byNeed;
    }

    /** Most needs are bought in one line. */
    private static List<LineCost> with(List<LineCost> lines, LineCost line) {
        if (lines.isEmpty()) {
            return List.of(line);
        }
        List<LineCost> more = new ArrayList<>(lines);
        more.add(line);
        return more;
    }

    /** The offers of all lines. */
    Stream<Listing> bought() {
        return cost.lines().stream().map(this::listing);
    }

    /** The offer of a line. */
    public Listing listing(LineCost line) {
        return listings.get(line.line().quote());
    }
}
