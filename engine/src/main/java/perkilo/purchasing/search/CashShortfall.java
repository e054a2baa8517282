package perkilo.purchasing.search;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.purchasing.Need;
import perkilo.purchasing.PlanCost;
import perkilo.purchasing.PlanOutcome.Shortfall;
import perkilo.purchasing.PurchasePlan;
import perkilo.purchasing.PurchaseProblem;

/** Finds how much money is missing if the limits on cash allow no plan. */
final class CashShortfall {
    /** How often the range of possible limits is halved. */
    private static final int HALVINGS = 10;

    private final PurchaseProblem problem;
    private final Deadline deadline;

    CashShortfall(PurchaseProblem problem, Deadline deadline) {
        this.problem = problem;
        this.deadline = deadline;
    }

    Shortfall shortfall() {
        PlanCost least = cheapestOutlay(null, null);
        BigDecimal total = problem.cashTotal();
        if (total != null && least != null && least.outlay().compareTo(total) > 0) {
            return new Shortfall(
                    -1,
                    0,
                    "covering all needs takes %s, and no more than %s may be paid out in all"
                            .formatted(money(least.outlay()), money(total)),
                    "allow %s more in all".formatted(money(least.outlay().subtract(total))));
        }
        return perPeriod(least);
    }

    private Shortfall perPeriod(@Nullable PlanCost least) {
        BigDecimal limit = problem.cashPerPeriod();
        if (limit == null || least == null) {
            return new Shortfall(-1, 0, "the limits on cash allow no plan", "");
        }
        BigDecimal enough = enoughPerPeriod(limit, least);
        return new Shortfall(
                -1,
                firstOver(limit, least),
                "no plan covers all needs with payments of at most %s in each period".formatted(money(limit)),
                "allow %s in each period".formatted(money(enough)));
    }

    private int firstOver(BigDecimal limit, PlanCost cost) {
        List<BigDecimal> paid = cost.paid(problem);
        int first = 0;
        while (first < paid.size() - 1 && paid.get(first).compareTo(limit) <= 0) {
            first++;
        }
        return first;
    }

    /** A limit per period that allows a plan, only a little above one that does not. */
    private BigDecimal enoughPerPeriod(BigDecimal limit, PlanCost least) {
        BigDecimal tooLittle = limit;
        BigDecimal enough = highestPeriod(least);
        for (int i = 0; i < HALVINGS && !deadline.over(); i++) {
            BigDecimal half = tooLittle.add(enough).divide(BigDecimal.valueOf(2));
            PlanCost cost = cheapestOutlay(half, problem.cashTotal());
            if (cost == null) {
                tooLittle = half;
            } else {
                enough = highestPeriod(cost);
            }
        }
        return enough;
    }

    private BigDecimal highestPeriod(PlanCost cost) {
        BigDecimal highest = BigDecimal.ZERO;
        for (BigDecimal paid : cost.paid(problem)) {
            highest = highest.max(paid);
        }
        return highest;
    }

    /** The plan that pays out the least; the cost of keeping stock is ignored. */
    private @Nullable PlanCost cheapestOutlay(@Nullable BigDecimal perPeriod, @Nullable BigDecimal total) {
        List<Need> needs = problem.needs().stream().map(Need::withFreeStock).toList();
        PurchaseProblem asked =
                problem.withNeeds(needs).withCash(perPeriod, total).withOrderCost(BigDecimal.ZERO);
        Planning planning = new Planning(new SearchMarket(asked));
        new BranchAndBound(planning, deadline).search();
        JointPlan best = planning.incumbent.best();
        if (best == null) {
            return null;
        }
        PurchasePlan plan = best.plan();
        return PlanCost.of(asked, plan);
    }

    private static String money(BigDecimal amount) {
        return amount.setScale(2, RoundingMode.CEILING).toPlainString();
    }
}
