package perkilo.purchasing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Checks that a plan keeps every rule, without any code of the search that made the plan. */
public final class PlanCheck {

    private PlanCheck() {}

    /**
     * Every rule that a plan breaks.
     *
     * @return a sentence for each; empty if the plan can be carried out
     */
    public static List<String> violations(PurchaseProblem problem, PurchasePlan plan) {
        List<String> broken = new ArrayList<>();
        if (linesAreRight(problem, plan, broken)) {
            checkOrders(problem, PlanCost.of(problem, plan), broken);
        }
        return broken;
    }

    /**
     * Every rule that a plan breaks, if its cost is known already.
     *
     * @param cost of this plan
     * @return a sentence for each; empty if the plan can be carried out
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
        Map<Integer, List<Shelf.Bought>> bought = new HashMap<>();
        boolean priced = true;
        boolean inTime = true;
        PurchasePlan.Line before = null;
        for (PurchasePlan.Line line : plan.lines()) {
            if (before != null && before.quote() == line.quote() && before.period() == line.period()) {
                broken.add("quote %d occurs twice in period %d".formatted(line.quote(), line.period() + 1));
            }
            before = line;
            Quote quote = problem.quotes().get(line.quote());
            BigDecimal quantity = quote.quantity(line.packs());
            priced &= checkLine(problem, line, quantity, broken);
            if (line.period() < 0 || line.period() >= problem.periods()) {
                inTime = false;
            } else {
                Need need = problem.needs().get(quote.item());
                bought.computeIfAbsent(quote.item(), item -> new ArrayList<>(1)).add(quote.bought(need, line));
            }
        }
        if (inTime) {
            checkNeeds(problem, bought, broken);
        }
        return inTime && priced;
    }

    private static boolean checkLine(
            PurchaseProblem problem, PurchasePlan.Line line, BigDecimal quantity, List<String> broken) {
        Quote quote = problem.quotes().get(line.quote());
        int before = broken.size();
        if (quote.multiple() != 1 && line.packs() % quote.multiple() != 0) {
            broken.add("%d packs are not a multiple of %d".formatted(line.packs(), quote.multiple()));
        }
        if (quantity.compareTo(quote.minimum()) < 0) {
            broken.add("%s is below the minimum order of %s".formatted(quantity, quote.minimum()));
        }
        if (line.period() < 0 || line.period() >= problem.periods()) {
            broken.add("the plan ends with period %d".formatted(problem.periods()));
        }
        if (line.period() >= 0 && line.period() < problem.periods() && !quote.isFor(line.period())) {
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

    /** Checks that needs are covered and safety stock is there, with what is bought of each item. */
    private static void checkNeeds(
            PurchaseProblem problem, Map<Integer, List<Shelf.Bought>> bought, List<String> broken) {
        for (int item = 0; item < problem.needs().size(); item++) {
            Need need = problem.needs().get(item);
            List<Shelf.Bought> ofItem = bought.getOrDefault(item, List.of());
            if (isPlainlyCovered(need, ofItem)) {
                continue;
            }
            Shelf shelf = Shelf.withPurchases(need, ofItem);
            List<BigDecimal> uncovered = shelf.uncovered();
            for (int period = 0; period < uncovered.size(); period++) {
                BigDecimal missing = uncovered.get(period);
                if (missing.signum() > 0) {
                    broken.add("%s: short by %s in period %d".formatted(need.item(), missing, period + 1));
                }
            }
            int below = need.firstBelowSafety(shelf);
            if (below >= 0) {
                broken.add("%s: %s is less than the safety stock of %s in period %d"
                        .formatted(
                                need.item(), shelf.usable(below), need.safety().quantity(), below + 1));
            }
        }
    }

    /** Whether the shelf need not be computed: there is one period, and enough is bought for it. */
    private static boolean isPlainlyCovered(Need need, List<Shelf.Bought> bought) {
        return need.perPeriod().size() == 1
                && need.safety().isNone()
                && bought.stream()
                                .map(Shelf.Bought::quantity)
                                .reduce(BigDecimal.ZERO, BigDecimal::add)
                                .compareTo(need.perPeriod().get(0))
                        >= 0;
    }

    private static void checkOrders(PurchaseProblem problem, PlanCost cost, List<String> broken) {
        for (OrderCost order : cost.orders()) {
            Vendor vendor = problem.vendors().get(order.vendor());
            if (order.isRefused()) {
                broken.add("%s in period %d: goods of %s are below the minimum order value of %s"
                        .formatted(vendor.name(), order.period() + 1, order.goods(), vendor.minimumOrderValue()));
            }
        }
        BigDecimal perPeriod = problem.cashPerPeriod();
        if (perPeriod != null) {
            List<BigDecimal> paid = cost.paid(problem);
            for (int limit = 0; limit < paid.size(); limit++) {
                checkCash("period " + (limit + 1), paid.get(limit), perPeriod, broken);
            }
        }
        checkCash("all periods", cost.outlay(), problem.cashTotal(), broken);
    }

    private static void checkCash(String when, BigDecimal outlay, @Nullable BigDecimal limit, List<String> broken) {
        if (limit != null && outlay.compareTo(limit) > 0) {
            broken.add("%s: %s is more than the limit on cash of %s".formatted(when, outlay, limit));
        }
    }
}
