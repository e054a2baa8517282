package perkilo.ordering.sets;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import perkilo.purchasing.Need;
import perkilo.purchasing.PlanCheck;
import perkilo.purchasing.PlanCost;
import perkilo.purchasing.PlanOutcome;
import perkilo.purchasing.PlanPurchases;
import perkilo.purchasing.PurchasePlan;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.SearchLimits;
import perkilo.purchasing.Vendor;

/**
 * Plans many purchases that differ in one item or two, quickly; the plan comes with what is proven about it.
 *
 * <p>Without minimum order values a purchase falls apart once it is known which vendors get an order: each item takes
 * its cheapest cover from them. So all sets of vendors are looked at, the least possible cost first, with covers that
 * are kept from one problem to the next. A set whose plan meets every minimum is settled; elsewhere the plan is
 * repaired and the least possible cost stays the bound. What is not of this kind (several periods, stock, limits on
 * cash, credit for leftovers, too many vendors) goes to the planner behind it.
 *
 * <p>For problems over one market: vendors and the quotes of an item must be the same in all of them.
 */
public final class QuickPlanner implements PlanPurchases {

    private static final int MOST_VENDORS = 12;

    /** What plain fractions may miss the exact cost by, in home currency. */
    private static final double ROUNDING = 1e-6;

    /** A gap to the bound that is below half a minor unit of most currencies. */
    private static final BigDecimal SETTLED = new BigDecimal("0.004");

    private final PlanPurchases planner;
    private final Map<Key, Covers> covers = new ConcurrentHashMap<>();

    /**
     * A quick planner before another.
     *
     * @param planner asked where this one can't answer
     */
    public QuickPlanner(PlanPurchases planner) {
        this.planner = planner;
    }

    private record Key(String item, BigDecimal need) {}

    private record Covers(@Nullable ItemCovers covers) {}

    @Override
    public PlanOutcome plan(PurchaseProblem problem, SearchLimits limits) {
        Map<Integer, ItemCovers> items = isPlain(problem) ? itemCovers(problem) : Map.of();
        if (items.isEmpty()) {
            return planner.plan(problem, limits);
        }
        VendorSets.Answer answer = new VendorSets(problem.vendors(), List.copyOf(items.values())).search();
        List<Cover.Pick> picks = answer.picks();
        if (picks == null) {
            return planner.plan(problem, limits);
        }
        PurchasePlan plan = plan(picks, quoteOf(problem, items));
        return PlanCheck.violations(problem, plan).isEmpty()
                ? outcome(plan, PlanCost.of(problem, plan), BigDecimal.valueOf(answer.bound() - ROUNDING))
                : planner.plan(problem, limits);
    }

    private static PlanOutcome outcome(PurchasePlan plan, PlanCost cost, BigDecimal bound) {
        BigDecimal least = bound.min(cost.objective());
        return cost.objective().subtract(least).compareTo(SETTLED) <= 0
                ? new PlanOutcome.Proven(plan, cost, least)
                : new PlanOutcome.BestSoFar(plan, cost, least);
    }

    private static PurchasePlan plan(List<Cover.Pick> picks, Map<PackPrice, Integer> quoteOf) {
        return new PurchasePlan(picks.stream()
                .map(pick -> new PurchasePlan.Line(Objects.requireNonNull(quoteOf.get(pick.price())), 0, pick.packs()))
                .toList());
    }

    /** Which of the problem's quotes a price is of. */
    private static Map<PackPrice, Integer> quoteOf(PurchaseProblem problem, Map<Integer, ItemCovers> items) {
        Map<PackPrice, Integer> quoteOf = new HashMap<>();
        Map<Integer, Integer> seen = new HashMap<>();
        for (int quote = 0; quote < problem.quotes().size(); quote++) {
            int item = problem.quotes().get(quote).item();
            ItemCovers covers = items.get(item);
            if (covers != null) {
                int position = seen.merge(item, 1, Integer::sum) - 1;
                quoteOf.put(covers.prices().get(position), quote);
            }
        }
        return quoteOf;
    }

    private static boolean isPlain(PurchaseProblem problem) {
        return problem.periods() == 1
                && problem.vendors().size() <= MOST_VENDORS
                && problem.cashPerPeriod() == null
                && problem.cashTotal() == null
                && problem.needs().stream().allMatch(QuickPlanner::isPlain);
    }

    private static boolean isPlain(Need need) {
        return need.stock().isEmpty()
                && need.creditPerUnit().signum() == 0
                && need.holdingPerUnit().signum() == 0;
    }

    /** The covers of every item that is needed, by its index; none where one has too many vendors. */
    private Map<Integer, ItemCovers> itemCovers(PurchaseProblem problem) {
        Map<Integer, ItemCovers> items = new LinkedHashMap<>();
        for (int item = 0; item < problem.needs().size(); item++) {
            BigDecimal need = problem.needs().get(item).total();
            if (need.signum() > 0) {
                int index = item;
                Key key = new Key(problem.needs().get(item).item(), need);
                ItemCovers known = covers.computeIfAbsent(
                                key, absent -> new Covers(ItemCovers.of(prices(problem, index), need)))
                        .covers();
                if (known == null) {
                    return Map.of();
                }
                items.put(item, known);
            }
        }
        return items;
    }

    private static List<PackPrice> prices(PurchaseProblem problem, int item) {
        List<PackPrice> prices = new ArrayList<>();
        for (int i = 0; i < problem.quotes().size(); i++) {
            if (problem.quotes().get(i).item() == item) {
                Vendor vendor = problem.vendorOf(problem.quotes().get(i));
                prices.add(new PackPrice(problem.quotes().get(i), prices.size(), vendor));
            }
        }
        return prices;
    }
}
