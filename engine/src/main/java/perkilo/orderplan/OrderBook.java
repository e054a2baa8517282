package perkilo.orderplan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import perkilo.costing.Market;
import perkilo.costing.Unsold;
import perkilo.model.Book;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.purchasing.PlanOutcome;
import perkilo.purchasing.PlanPurchases;
import perkilo.purchasing.SearchLimits;

/** Plans the orders of a book. */
public final class OrderBook {

    private final PlanPurchases planner;
    private final SearchLimits limits;

    /**
     * Planning with a planner.
     *
     * @param planner finds the purchases
     * @param limits for the search
     */
    public OrderBook(PlanPurchases planner, SearchLimits limits) {
        this.planner = planner;
        this.limits = limits;
    }

    /**
     * Plans all orders for the demand of a book.
     *
     * @param book free of errors
     * @return the plan, or everything that prevents one
     */
    public OrderOutcome plan(Book book) {
        List<Finding> badDemand = Horizon.problems(book);
        if (!badDemand.isEmpty()) {
            return new OrderOutcome.NoPlan(badDemand, true);
        }
        Horizon horizon = Horizon.of(book);
        Market market = Market.forOrdersUntil(book, horizon.lastOrderDay());
        HorizonProblem basis = HorizonProblem.of(market, horizon);
        List<Finding> unmeasured = unmeasured(market, basis);
        if (!unmeasured.isEmpty()) {
            return new OrderOutcome.NoPlan(unmeasured, true);
        }
        List<Finding> unsupplied = unsupplied(market, basis);
        return unsupplied.isEmpty() ? search(market, basis) : new OrderOutcome.NoPlan(unsupplied, false);
    }

    /** Errors about stock and announced prices in units that do not fit the item. */
    private static List<Finding> unmeasured(Market market, HorizonProblem basis) {
        List<Finding> problems = new ArrayList<>();
        AnnouncedPrices announced = new AnnouncedPrices(market, basis);
        for (HorizonItem item : basis.items()) {
            problems.addAll(StockOnHand.problems(market.book(), item.item()));
            problems.addAll(announced.unmeasured(item.item()));
        }
        return problems;
    }

    /** Errors about items that the stock does not cover and that have no offer, or cannot arrive in time. */
    private static List<Finding> unsupplied(Market market, HorizonProblem basis) {
        Set<Finding> problems = new LinkedHashSet<>();
        for (int index = 0; index < basis.items().size(); index++) {
            HorizonItem item = basis.items().get(index);
            boolean missing = basis.problem().needs().get(index).net().stream().anyMatch(net -> net.signum() > 0);
            if (missing && market.listings(item.name()).isEmpty()) {
                problems.add(Finding.error(item.item().origin(), Unsold.why(market.book(), item.item())));
            }
        }
        problems.addAll(new TooEarly(market, basis).problems());
        return List.copyOf(problems);
    }

    private OrderOutcome search(Market market, HorizonProblem basis) {
        PlanOutcome outcome = planner.plan(basis.problem(), limits);
        if (outcome instanceof PlanOutcome.Proven proven) {
            return planned(market, OrderPlan.of(market, basis, proven.plan(), proven.cost(), proven.bound(), true));
        }
        if (outcome instanceof PlanOutcome.BestSoFar best) {
            return planned(market, OrderPlan.of(market, basis, best.plan(), best.cost(), best.bound(), false));
        }
        if (outcome instanceof PlanOutcome.Impossible impossible) {
            List<Finding> problems = new ArrayList<>();
            impossible.shortfalls().forEach(shortfall -> problems.add(problem(basis, shortfall)));
            problems.addAll(new AnnouncedPrices(market, basis).gaps());
            return new OrderOutcome.NoPlan(problems, false);
        }
        return new OrderOutcome.NoPlan(List.of(Finding.error(Origin.NONE, OrderMessages.noPlanInTime())), false);
    }

    private static OrderOutcome planned(Market market, OrderPlan plan) {
        return new OrderOutcome.Planned(market.book(), market, plan, OrderNotes.of(market, plan));
    }

    private static Finding problem(HorizonProblem basis, PlanOutcome.Shortfall shortfall) {
        String when = basis.horizon().name(shortfall.period());
        if (shortfall.item() < 0) {
            return Finding.error(
                    Origin.NONE, OrderMessages.shortfallOfOrders(when, shortfall.reason(), shortfall.remedy()));
        }
        HorizonItem item = basis.items().get(shortfall.item());
        Origin origin = item.uses().stream()
                .filter(use -> use.run().period() == shortfall.period())
                .findFirst()
                .orElse(item.uses().get(0))
                .run()
                .demand()
                .origin();
        return Finding.error(
                origin, OrderMessages.shortfallOfItem(item.name(), when, shortfall.reason(), shortfall.remedy()));
    }
}
