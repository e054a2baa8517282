package perkilo.orderplan;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import perkilo.costing.Market;
import perkilo.model.Book;
import perkilo.model.Gaps;
import perkilo.offers.Offer;
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
     * Plans all orders for the demand of a book. What cannot be met, or not in time, does not keep the rest from being
     * planned.
     *
     * @param book what could be read of a book
     * @return the plan, or why there is none
     */
    public OrderOutcome plan(Book book) {
        if (book.demand().isEmpty()) {
            return new OrderOutcome.NoPlan(Horizon.problems(book), true);
        }
        Book orderable = book.withOffers(withLeadTimes(book));
        LocalDate last = Horizon.lastDay(book);
        Market market = Market.forOrdersUntil(orderable, last);
        Plannable plannable = Plannable.of(market, Market.forOrdersUntil(orderable, last.plusYears(1)));
        LocalDate end = plannable.horizon().end();
        if (end.isAfter(last)) {
            market = Market.forOrdersUntil(orderable, end);
        }
        return search(market, plannable, new ArrayList<>(Horizon.problems(book)));
    }

    /** The offers of suppliers whose lead time can be read. */
    private static List<Offer> withLeadTimes(Book book) {
        return book.gaps().has(Gaps.Kind.LEAD_TIME)
                ? book.offers().stream()
                        .filter(offer -> book.gaps()
                                .of(Gaps.Kind.LEAD_TIME, offer.supplier())
                                .isEmpty())
                        .toList()
                : book.offers();
    }

    /** Searches again without what is impossible, until there is a plan for the rest. */
    private OrderOutcome search(Market market, Plannable plannable, List<Finding> problems) {
        boolean limited = true;
        while (true) {
            if (plannable.isNothing()) {
                problems.addAll(plannable.problems());
                return new OrderOutcome.NoPlan(problems, true);
            }
            HorizonProblem all = plannable.problem(market);
            HorizonProblem basis = limited ? all : all.withoutCashLimits();
            PlanOutcome outcome = planner.plan(basis.problem(), limits);
            if (outcome instanceof PlanOutcome.Proven proven) {
                OrderPlan plan = OrderPlan.of(market, basis, proven.plan(), proven.cost(), proven.bound(), true);
                return planned(market, plan, plannable, problems);
            }
            if (outcome instanceof PlanOutcome.BestSoFar best) {
                OrderPlan plan = OrderPlan.of(market, basis, best.plan(), best.cost(), best.bound(), false);
                return planned(market, plan, plannable, problems);
            }
            if (!(outcome instanceof PlanOutcome.Impossible impossible)) {
                problems.addAll(plannable.problems());
                problems.add(Finding.error(Origin.NONE, OrderMessages.noPlanInTime()));
                return new OrderOutcome.NoPlan(problems, false);
            }
            impossible.shortfalls().forEach(shortfall -> problems.add(problem(basis, shortfall)));
            boolean less = false;
            for (PlanOutcome.Shortfall shortfall : impossible.shortfalls()) {
                less |= shortfall.item() >= 0
                        && plannable.leaveOut(basis, shortfall.item(), shortfall.period(), inShort(shortfall.reason()));
            }
            if (!less && !limited) {
                problems.addAll(plannable.problems());
                problems.addAll(new AnnouncedPrices(market, basis).gaps());
                return new OrderOutcome.NoPlan(problems, false);
            }
            limited &= less;
        }
    }

    private static String inShort(String reason) {
        return reason.endsWith(".") ? reason.substring(0, reason.length() - 1) : reason;
    }

    private static OrderOutcome planned(Market market, OrderPlan plan, Plannable plannable, List<Finding> problems) {
        List<Finding> findings = new ArrayList<>(problems);
        findings.addAll(plannable.problems());
        findings.addAll(OrderNotes.of(market, plan));
        return new OrderOutcome.Planned(market.book(), market, plan, plannable.unmet(), findings);
    }

    private static Finding problem(HorizonProblem basis, PlanOutcome.Shortfall shortfall) {
        if (shortfall.item() < 0) {
            YearMonth month = YearMonth.from(basis.horizon().today()).plusMonths(shortfall.period());
            return Finding.error(
                    Origin.NONE, OrderMessages.shortfallOfOrders(month, shortfall.reason(), shortfall.remedy()));
        }
        String when = basis.horizon().name(shortfall.period());
        LocalDate day = basis.horizon().day(shortfall.period());
        HorizonItem item = basis.items().get(shortfall.item());
        Origin origin = item.uses().stream()
                .filter(use -> use.day().equals(day))
                .findFirst()
                .orElse(item.uses().get(0))
                .run()
                .demand()
                .origin();
        return Finding.error(
                origin, OrderMessages.shortfallOfItem(item.name(), when, shortfall.reason(), shortfall.remedy()));
    }
}
