package perkilo.purchasing.search.quick;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.purchasing.DutySpread;
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
 * Plans many purchases that differ in one item or two, quickly; a plan comes with its bound.
 *
 * <p>If no vendor charges anything for an order as a whole, each item takes its cheapest cover, and the plan is proven
 * ({@link ItemByItem}). Otherwise the items are independent once it is known which vendors get an order, but for
 * minimum order values. So all sets of vendors are tried, the least possible cost first ({@link VendorSets}). A set
 * whose plan meets every minimum is settled; otherwise the plan is repaired and the least possible cost stays the
 * bound. Where an order's lines have several rates of duty, sets are settled by {@link DutySearch}. Other problems
 * (several periods, stock, limits on cash, leftovers worth more than the next pack costs, items without need that may
 * fill a minimum, too many vendors) go to the planner behind it.
 *
 * <p>Results are remembered for the next problem over the same market ({@link Markets}). May be used by several threads
 * if the planner behind it may.
 */
public final class QuickPlanner implements PlanPurchases {

    /** The most by which a cost in {@code double}s may differ from the exact cost, in home currency. */
    private static final double ROUNDING = 1e-6;

    /** A gap to the bound that is below half a minor unit of most currencies. */
    private static final BigDecimal SETTLED = new BigDecimal("0.004");

    private final PlanPurchases planner;
    private final Markets markets = new Markets();

    /**
     * A quick planner in front of another.
     *
     * @param planner plans the problems that this one cannot
     */
    public QuickPlanner(PlanPurchases planner) {
        this.planner = planner;
    }

    @Override
    public PlanOutcome plan(PurchaseProblem problem, SearchLimits limits) {
        PlanOutcome quick = isPlain(problem) ? quick(problem) : null;
        return quick == null ? planner.plan(problem, limits) : quick;
    }

    /** The outcome if it can be found quickly; else null. */
    private @Nullable PlanOutcome quick(PurchaseProblem problem) {
        MarketPrices market = markets.of(problem.vendors());
        List<AskedItem> items = AskedItem.of(problem, market);
        if (items.isEmpty()) {
            return null;
        }
        for (AskedItem item : items) {
            if (!item.prices().neverPayForMore(item.wanted())) {
                return null;
            }
        }
        DutySpread[] rates = DutySpread.of(problem.vendors().size(), problem.quotes());
        boolean byItem = ItemByItem.fits(items);
        if (!byItem && items.size() < problem.needs().size()) {
            return null;
        }
        VendorSets.Answer answer = byItem ? ItemByItem.cheapest(market, items) : bySets(problem, rates, market, items);
        List<List<Cover.Pick>> picks = answer.picks();
        if (picks == null) {
            return null;
        }
        PackPrice[] priced = new PackPrice[problem.quotes().size()];
        PurchasePlan plan = plan(items, picks, priced);
        PlanCost cost = PlanCost.of(problem, plan, (quote, packs) -> priced[quote].exactCost(packs));
        if (!PlanCheck.violations(problem, plan, cost).isEmpty()) {
            return null;
        }
        PlanOutcome outcome = outcome(plan, cost, justBelow(answer.bound()));
        return outcome instanceof PlanOutcome.Proven || !isMixed(problem.vendors(), rates) ? outcome : null;
    }

    /** Whether the charges of an order may pay different duty, depending on its lines. */
    private static boolean isMixed(List<Vendor> vendors, DutySpread[] rates) {
        for (int vendor = 0; vendor < rates.length; vendor++) {
            if (vendors.get(vendor).hasMixedDutyOnCharges(rates[vendor])) {
                return true;
            }
        }
        return false;
    }

    private static VendorSets.Answer bySets(
            PurchaseProblem problem, DutySpread[] rates, MarketPrices market, List<AskedItem> items) {
        List<ItemCovers> covers = new ArrayList<>(items.size());
        boolean isWithin = problem.vendors().size() < Integer.SIZE;
        for (AskedItem item : items) {
            isWithin = isWithin && item.prices().vendors().length <= ItemCovers.MOST_VENDORS;
            covers.add(market.covers(item.prices(), item.wanted()));
        }
        VendorSets sets = new VendorSets(problem.vendors(), rates, covers);
        if (!isWithin || !sets.areFew()) {
            return new VendorSets.Answer(null, Double.NEGATIVE_INFINITY);
        }
        KnownPurchases.Known like = market.purchases().like(covers);
        VendorSets.Answer answer = sets.search(like == null || like.isAllOf(covers) ? null : like);
        if (like == null && answer.picks() != null) {
            market.purchases().add(covers, answer.picks());
        }
        return answer;
    }

    private static PlanOutcome outcome(PurchasePlan plan, PlanCost cost, BigDecimal bound) {
        BigDecimal gap = cost.objective().subtract(bound);
        BigDecimal least = gap.signum() < 0 ? cost.objective() : bound;
        return gap.compareTo(SETTLED) <= 0
                ? new PlanOutcome.Proven(plan, cost, least)
                : new PlanOutcome.BestSoFar(plan, cost, least);
    }

    /** A bound that rounding cannot have made too high, with as many digits as are meaningful. */
    private static BigDecimal justBelow(double bound) {
        double below = bound - ROUNDING;
        return Math.abs(below) < 1e9
                ? BigDecimal.valueOf((long) Math.floor(below / ROUNDING), 6)
                : BigDecimal.valueOf(below);
    }

    /** The plan; also writes the price of each quote that is bought to its index in {@code priced}. */
    private static PurchasePlan plan(List<AskedItem> items, List<List<Cover.Pick>> picks, PackPrice[] priced) {
        List<PurchasePlan.Line> lines = new ArrayList<>(items.size());
        for (int item = 0; item < items.size(); item++) {
            for (Cover.Pick pick : picks.get(item)) {
                int quote = items.get(item).quotes()[pick.price().index()];
                priced[quote] = pick.price();
                lines.add(new PurchasePlan.Line(quote, 0, pick.packs()));
            }
        }
        return new PurchasePlan(lines);
    }

    private static boolean isPlain(PurchaseProblem problem) {
        if (problem.periods() != 1 || problem.cashPerPeriod() != null || problem.cashTotal() != null) {
            return false;
        }
        for (Need need : problem.needs()) {
            if (!need.stock().isEmpty() || need.holdingPerUnit().signum() != 0) {
                return false;
            }
        }
        return true;
    }
}
