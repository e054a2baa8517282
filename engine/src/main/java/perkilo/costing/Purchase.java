package perkilo.costing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import perkilo.purchasing.LineCost;
import perkilo.purchasing.OrderCost;
import perkilo.purchasing.PlanCost;
import perkilo.purchasing.PurchasePlan;
import perkilo.purchasing.PurchaseProblem;

/**
 * What is bought for a run.
 *
 * @param problem what had to be bought and who sells it
 * @param listings behind the problem's quotes, by quote index
 * @param plan what is bought
 * @param cost what that costs
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
        List<List<LineCost>> byNeed = new ArrayList<>();
        for (int need = 0; need < problem.needs().size(); need++) {
            byNeed.add(new ArrayList<>(1));
        }
        for (OrderCost order : cost.orders()) {
            for (LineCost line : order.lines()) {
                int need = problem.quotes().get(line.line().quote()).item();
                byNeed.get(need).add(line);
            }
        }
        return byNeed;
    }

    /** The offer behind a line. */
    public Listing listing(LineCost line) {
        return listings.get(line.line().quote());
    }
}
