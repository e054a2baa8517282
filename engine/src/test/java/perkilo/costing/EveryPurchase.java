package perkilo.costing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.purchasing.PlanCheck;
import perkilo.purchasing.PlanCost;
import perkilo.purchasing.PlanOutcome;
import perkilo.purchasing.PlanPurchases;
import perkilo.purchasing.PurchasePlan;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.Quote;
import perkilo.purchasing.SearchLimits;
import perkilo.purchasing.Tier;
import perkilo.purchasing.Vendor;

/**
 * Tries every purchase of one period and takes the cheapest: right by construction, and only for a handful of offers.
 *
 * <p>The quotes of one item stand together. No line has to be larger than what covers its need alone, reaches the
 * highest price break and the minimum order value by itself: beyond that another pack only costs.
 */
final class EveryPurchase implements PlanPurchases {

    /** As many plans as are tried within a blink. */
    private static final long USUAL_MOST = 20_000;

    private final long most;

    EveryPurchase() {
        this(USUAL_MOST);
    }

    /**
     * A planner that gives up where there is too much to try.
     *
     * @param most plans it tries at most
     */
    EveryPurchase(long most) {
        this.most = most;
    }

    @Override
    public PlanOutcome plan(PurchaseProblem problem, SearchLimits limits) {
        List<Long> bounds = problem.quotes().stream()
                .map(quote -> mostSteps(problem, quote))
                .toList();
        double plans = 1;
        for (long bound : bounds) {
            plans *= bound + 1;
        }
        if (plans > most) {
            return new PlanOutcome.NoneFound(BigDecimal.ZERO);
        }
        Search search = new Search(problem, bounds);
        search.from(0, new ArrayList<>());
        PurchasePlan best = search.best;
        if (best == null) {
            return new PlanOutcome.Impossible(
                    List.of(new PlanOutcome.Shortfall(0, 0, "no purchase covers everything.", "Buy elsewhere.")));
        }
        PlanCost cost = PlanCost.of(problem, best);
        return new PlanOutcome.Proven(best, cost, cost.objective());
    }

    private static long mostSteps(PurchaseProblem problem, Quote quote) {
        BigDecimal need = problem.needs().get(quote.item()).total();
        if (need.signum() == 0) {
            return 0;
        }
        BigDecimal top = quote.tiers().get(quote.tiers().size() - 1).from();
        long packs = quote.packsFor(need.max(top).max(quote.smallestLine()));
        Vendor vendor = problem.vendorOf(quote);
        BigDecimal cheapest = quote.tiers().stream()
                .map(Tier::pricePerPack)
                .min(BigDecimal::compareTo)
                .orElseThrow()
                .multiply(quote.toVendorCurrency());
        if (vendor.minimumOrderValue().signum() > 0 && cheapest.signum() > 0) {
            // one pack more, as a line may be invoiced below its exact value
            packs = Math.max(
                    packs,
                    vendor.minimumOrderValue()
                                    .divide(cheapest, 0, RoundingMode.CEILING)
                                    .longValueExact()
                            + 1);
        }
        return (packs + quote.multiple() - 1) / quote.multiple();
    }

    private static final class Search {
        private final PurchaseProblem problem;
        private final List<Long> bounds;
        private @Nullable PurchasePlan best;
        private @Nullable BigDecimal lowest;

        Search(PurchaseProblem problem, List<Long> bounds) {
            this.problem = problem;
            this.bounds = bounds;
        }

        /** Tries every number of packs of the quotes from {@code quote} on. */
        void from(int quote, List<PurchasePlan.Line> lines) {
            if (quote > 0 && isLastOfItsItem(quote - 1) && isShort(quote - 1, lines)) {
                return;
            }
            if (quote == bounds.size()) {
                consider(new PurchasePlan(lines));
                return;
            }
            from(quote + 1, lines);
            for (long steps = 1; steps <= bounds.get(quote); steps++) {
                long packs = steps * problem.quotes().get(quote).multiple();
                lines.add(new PurchasePlan.Line(quote, 0, packs));
                from(quote + 1, lines);
                lines.remove(lines.size() - 1);
            }
        }

        private boolean isLastOfItsItem(int quote) {
            return quote + 1 == bounds.size()
                    || problem.quotes().get(quote + 1).item()
                            != problem.quotes().get(quote).item();
        }

        /** Whether what is bought of a quote's item is less than what is needed of it. */
        private boolean isShort(int quote, List<PurchasePlan.Line> lines) {
            int item = problem.quotes().get(quote).item();
            BigDecimal bought = lines.stream()
                    .filter(line -> problem.quotes().get(line.quote()).item() == item)
                    .map(line -> problem.quotes().get(line.quote()).quantity(line.packs()))
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            return bought.compareTo(problem.needs().get(item).total()) < 0;
        }

        private void consider(PurchasePlan plan) {
            boolean priced = plan.lines().stream()
                    .allMatch(line -> problem.quotes().get(line.quote()).tierFor(line.packs()) >= 0);
            if (!priced) {
                return;
            }
            BigDecimal objective = PlanCost.of(problem, plan).objective();
            boolean cheaper = lowest == null || objective.compareTo(lowest) < 0;
            if (cheaper && PlanCheck.violations(problem, plan).isEmpty()) {
                lowest = objective;
                best = plan;
            }
        }
    }
}
