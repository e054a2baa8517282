package perkilo.costing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Finding;
import perkilo.purchasing.Need;
import perkilo.purchasing.PlanOutcome;
import perkilo.purchasing.PlanPurchases;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.Quote;
import perkilo.purchasing.SearchLimits;

/** Finds what to buy for a run. */
final class PurchaseForRun {

    private final Market market;
    private final PlanPurchases planner;
    private final SearchLimits limits;

    PurchaseForRun(Market market, PlanPurchases planner, SearchLimits limits) {
        this.market = market;
        this.planner = planner;
        this.limits = limits;
    }

    /**
     * The result of the search.
     *
     * @param purchase null if something cannot be bought
     * @param problems what cannot be bought; empty if there is a purchase
     */
    record Outcome(@Nullable Purchase purchase, List<Finding> problems) {}

    /**
     * Finds the cheapest purchase that covers all needs of a run.
     *
     * @param sources of the run's items
     */
    Outcome find(RunNeeds needs, List<Source> sources) {
        List<Source> bought = new ArrayList<>(sources.size());
        List<Finding> unsold = new ArrayList<>();
        for (Source source : sources) {
            if (source.isBought()) {
                bought.add(source);
                if (source.offered().listings().isEmpty()) {
                    Item item = source.item();
                    unsold.add(Finding.error(item.origin(), Unsold.why(market.book(), item)));
                }
            }
        }
        return unsold.isEmpty() ? plan(needs, bought) : new Outcome(null, unsold);
    }

    private Outcome plan(RunNeeds needs, List<Source> bought) {
        List<Listing> listings = new ArrayList<>(2 * bought.size());
        List<Quote> quotes = new ArrayList<>(2 * bought.size());
        List<Need> wanted = new ArrayList<>(bought.size());
        for (Source source : bought) {
            quotes.addAll(source.offered().quotes().forNeed(wanted.size()));
            listings.addAll(source.offered().listings());
            wanted.add(need(needs, source.item(), source.offered()));
        }
        PurchaseProblem problem = PurchaseProblem.once(wanted, market.vendors(), quotes);
        return outcome(needs, bought, listings, problem, planner.plan(problem, limits));
    }

    private Need need(RunNeeds needs, Item item, Assortment offered) {
        BigDecimal credit = market.book().settings().leftoverCredit().value();
        BigDecimal lowest = offered.lowestPrice();
        if (lowest == null || credit.signum() == 0) {
            return Need.once(item.name(), item.needed());
        }
        BigDecimal usable = UsableLeftover.limit(needs, item);
        return new Need(
                item.name(),
                List.of(item.needed()),
                List.of(),
                Need.UNLIMITED,
                BigDecimal.ZERO,
                credit.multiply(lowest),
                usable == null ? item.needed().add(offered.beyondNeed()) : usable);
    }

    private static Outcome outcome(
            RunNeeds needs, List<Source> bought, List<Listing> listings, PurchaseProblem problem, PlanOutcome outcome) {
        if (outcome instanceof PlanOutcome.Proven proven) {
            return new Outcome(
                    new Purchase(problem, listings, proven.plan(), proven.cost(), proven.bound(), true), List.of());
        }
        if (outcome instanceof PlanOutcome.BestSoFar best) {
            return new Outcome(
                    new Purchase(problem, listings, best.plan(), best.cost(), best.bound(), false), List.of());
        }
        if (outcome instanceof PlanOutcome.Impossible impossible) {
            return new Outcome(
                    null,
                    impossible.shortfalls().stream()
                            .map(shortfall -> shortfall(needs, bought, shortfall))
                            .toList());
        }
        return new Outcome(
                null, List.of(Finding.error(needs.run().origin(), CostMessages.noPurchaseInTime(needs.title()))));
    }

    private static Finding shortfall(RunNeeds needs, List<Source> bought, PlanOutcome.Shortfall shortfall) {
        if (shortfall.item() < 0) {
            return Finding.error(needs.run().origin(), CostMessages.shortfall(shortfall.reason(), shortfall.remedy()));
        }
        Item item = bought.get(shortfall.item()).item();
        return Finding.error(
                item.origin(), CostMessages.shortfallOfItem(item.name(), shortfall.reason(), shortfall.remedy()));
    }
}
