package perkilo.purchasing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Whether a plan keeps every rule: a check that shares nothing with the search that made the plan. */
public final class PlanCheck {

    private PlanCheck() {}

    /**
     * Every rule that a plan breaks.
     *
     * @return a sentence for each; empty if the plan can be carried out as it stands
     */
    public static List<String> violations(PurchaseProblem problem, PurchasePlan plan) {
        List<String> broken = new ArrayList<>();
        if (linesAreRight(problem, plan, broken)) {
            checkOrders(problem, PlanCost.of(problem, plan), broken);
        }
        return broken;
    }

    /**
     * Every rule that a plan breaks whose cost is known already.
     *
     * @param cost of this plan
     * @return a sentence for each; empty if the plan can be carried out as it stands
     */
    public static List<String> violations(PurchaseProblem problem, PurchasePlan plan, PlanCost cost) {
        List<String> broken = new ArrayList<>();
        if (linesAreRight(problem, plan, broken)) {
            checkOrders(problem, cost, broken);
        }
        return broken;
    }

    /** Checks line by line and need by need; false where the orders can't be costed. */
    private static boolean linesAreRight(PurchaseProblem problem, PurchasePlan plan, List<String> broken) {
        boolean priced = true;
        boolean inTime = true;
        PurchasePlan.Line before = null;
        for (PurchasePlan.Line line : plan.lines()) {
            if (before != null && before.quote() == line.quote() && before.period() == line.period()) {
                broken.add("quote %d stands twice in period %d".formatted(line.quote(), line.period() + 1));
            }
            before = line;
            priced &= checkLine(problem, line, broken);
            inTime &= line.period() >= 0 && line.period() < problem.periods();
        }
        if (inTime) {
            checkNeeds(problem, plan, broken);
        }
        return inTime && priced;
    }

    private static boolean checkLine(PurchaseProblem problem, PurchasePlan.Line line, List<String> broken) {
        Quote quote = problem.quotes().get(line.quote());
        int before = broken.size();
        if (line.packs() % quote.multiple() != 0) {
            broken.add("%d packs are not a multiple of %d".formatted(line.packs(), quote.multiple()));
        }
        BigDecimal quantity = quote.quantity(line.packs());
        if (quantity.compareTo(quote.minimum()) < 0) {
            broken.add("%s is below the minimum order of %s".formatted(quantity, quote.minimum()));
        }
        if (line.period() < 0 || line.period() >= problem.periods()) {
            broken.add("the plan ends with period %d".formatted(problem.periods()));
        }
        if (line.period() < quote.firstPeriod() || line.period() > quote.lastPeriod()) {
            broken.add("it can only be had in periods %d to %d"
                    .formatted(quote.firstPeriod() + 1, quote.lastPeriod() + 1));
        }
        boolean priced = quantity.compareTo(quote.tiers().get(0).from()) >= 0;
        if (!priced) {
            broken.add("%s is below the first price".formatted(quantity));
        }
        for (int at = before; at < broken.size(); at++) {
            broken.set(at, name(problem, line) + ": " + broken.get(at));
        }
        return priced;
    }

    private static String name(PurchaseProblem problem, PurchasePlan.Line line) {
        Quote quote = problem.quotes().get(line.quote());
        return "%s from %s in period %d"
                .formatted(
                        problem.needs().get(quote.item()).item(),
                        problem.vendorOf(quote).name(),
                        line.period() + 1);
    }

    private static void checkNeeds(PurchaseProblem problem, PurchasePlan plan, List<String> broken) {
        BigDecimal[][] bought = boughtByItem(problem, plan);
        for (int item = 0; item < problem.needs().size(); item++) {
            Need need = problem.needs().get(item);
            List<BigDecimal> uncovered = uncovered(need, bought[item]);
            for (int period = 0; period < uncovered.size(); period++) {
                BigDecimal missing = uncovered.get(period);
                if (missing.signum() > 0) {
                    broken.add("%s: short by %s in period %d".formatted(need.item(), missing, period + 1));
                }
            }
        }
    }

    /** What is bought of every item in each period, in its base unit. */
    private static BigDecimal[][] boughtByItem(PurchaseProblem problem, PurchasePlan plan) {
        BigDecimal[][] bought = new BigDecimal[problem.needs().size()][problem.periods()];
        for (BigDecimal[] ofItem : bought) {
            Arrays.fill(ofItem, BigDecimal.ZERO);
        }
        for (PurchasePlan.Line line : plan.lines()) {
            Quote quote = problem.quotes().get(line.quote());
            BigDecimal[] ofItem = bought[quote.item()];
            ofItem[line.period()] = ofItem[line.period()].add(quote.quantity(line.packs()));
        }
        return bought;
    }

    /** What nothing on the shelf covers; with one period and no stock that is what was not bought. */
    private static List<BigDecimal> uncovered(Need need, BigDecimal[] bought) {
        return bought.length == 1 && need.stock().isEmpty()
                ? List.of(need.total().subtract(bought[0]))
                : Shelf.of(need, List.of(bought)).uncovered();
    }

    private static void checkOrders(PurchaseProblem problem, PlanCost cost, List<String> broken) {
        for (OrderCost order : cost.orders()) {
            Vendor vendor = problem.vendors().get(order.vendor());
            if (vendor.refusesSmallOrders() && order.goods().compareTo(vendor.minimumOrderValue()) < 0) {
                broken.add("%s in period %d: goods of %s are below the minimum order value of %s"
                        .formatted(vendor.name(), order.period() + 1, order.goods(), vendor.minimumOrderValue()));
            }
        }
        BigDecimal perPeriod = problem.cashPerPeriod();
        for (int period = 0; perPeriod != null && period < problem.periods(); period++) {
            checkCash("period " + (period + 1), cost.outlay(period), perPeriod, broken);
        }
        checkCash("all periods", cost.outlay(), problem.cashTotal(), broken);
    }

    private static void checkCash(String when, BigDecimal outlay, @Nullable BigDecimal limit, List<String> broken) {
        if (limit != null && outlay.compareTo(limit) > 0) {
            broken.add("%s: %s is more than the limit on cash of %s".formatted(when, outlay, limit));
        }
    }
}
