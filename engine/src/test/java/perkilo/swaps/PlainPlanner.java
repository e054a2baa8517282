package perkilo.swaps;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import perkilo.purchasing.Need;
import perkilo.purchasing.PlanCheck;
import perkilo.purchasing.PlanCost;
import perkilo.purchasing.PlanOutcome;
import perkilo.purchasing.PlanPurchases;
import perkilo.purchasing.PurchasePlan;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.Quote;
import perkilo.purchasing.SearchLimits;
import perkilo.purchasing.Tier;

/**
 * A planner for tests: the best purchase that takes one offer for each item, over all sets of suppliers.
 *
 * <p>For one period and few suppliers. It mixes no offers, so it is no proof of anything; it is the same every time.
 */
final class PlainPlanner implements PlanPurchases {

    @Override
    public PlanOutcome plan(PurchaseProblem problem, SearchLimits limits) {
        PurchasePlan best = null;
        PlanCost bestCost = null;
        int vendors = problem.vendors().size();
        for (int open = 0; open < 1 << vendors; open++) {
            Optional<PurchasePlan> plan = cheapestFrom(problem, open);
            if (plan.isPresent()) {
                PlanCost cost = PlanCost.of(problem, plan.get());
                boolean better = bestCost == null || cost.objective().compareTo(bestCost.objective()) < 0;
                if (better && PlanCheck.violations(problem, plan.get()).isEmpty()) {
                    best = plan.get();
                    bestCost = cost;
                }
            }
        }
        if (best == null || bestCost == null) {
            return new PlanOutcome.Impossible(List.of(new PlanOutcome.Shortfall(0, 0, "nothing covers it", "")));
        }
        return new PlanOutcome.Proven(best, bestCost, bestCost.objective());
    }

    private static Optional<PurchasePlan> cheapestFrom(PurchaseProblem problem, int open) {
        List<PurchasePlan.Line> lines = new ArrayList<>();
        for (int item = 0; item < problem.needs().size(); item++) {
            Need need = problem.needs().get(item);
            if (need.total().signum() > 0) {
                PurchasePlan.Line line = cheapest(problem, item, need.total(), open);
                if (line == null) {
                    return Optional.empty();
                }
                lines.add(line);
            }
        }
        return Optional.of(new PurchasePlan(lines));
    }

    private static PurchasePlan.@Nullable Line cheapest(PurchaseProblem problem, int item, BigDecimal need, int open) {
        PurchasePlan.Line best = null;
        BigDecimal bestPrice = BigDecimal.ZERO;
        for (int i = 0; i < problem.quotes().size(); i++) {
            Quote quote = problem.quotes().get(i);
            if (quote.item() != item || (open >> quote.vendor() & 1) == 0) {
                continue;
            }
            for (Tier tier : quote.tiers()) {
                long packs = quote.packsFor(need.max(quote.smallestLine()).max(tier.from()));
                BigDecimal price = quote.goods(packs)
                        .multiply(quote.toVendorCurrency())
                        .multiply(problem.vendorOf(quote).toHome());
                if (best == null || price.compareTo(bestPrice) < 0) {
                    best = new PurchasePlan.Line(i, 0, packs);
                    bestPrice = price;
                }
            }
        }
        return best;
    }
}
