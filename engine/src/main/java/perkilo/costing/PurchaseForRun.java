package perkilo.costing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

    /**
     * The purchase of all that can be bought.
     *
     * @param purchase of everything except what is unsold; null if nothing was found
     * @param unsold what cannot be bought, each with the reason
     * @param problems what keeps the run as a whole from being bought
     */
    record Known(@Nullable Purchase purchase, Map<Source, Finding> unsold, List<Finding> problems) {}

    /** Finds the cheapest purchase of what can be bought, and what cannot. */
    Known findKnown(RunNeeds needs, List<Source> sources) {
        Map<Source, Finding> unsold = new LinkedHashMap<>();
        List<Source> bought = new ArrayList<>(sources.size());
        for (Source source : sources) {
            if (source.isBought() && source.offered().listings().isEmpty()) {
                Item item = source.item();
                unsold.put(source, Finding.error(item.origin(), Unsold.why(market.book(), item)));
            } else if (source.isBought()) {
                bought.add(source);
            }
        }
        Search search = search(needs, bought);
        Purchase purchase = search.purchase();
        while (purchase == null && !bought.isEmpty()) {
            Map<Source, Finding> shortages = shortages(needs, List.copyOf(bought), search.outcome());
            unsold.putAll(shortages);
            bought.removeAll(shortages.keySet());
            search = search(needs, bought);
            purchase = search.purchase();
        }
        return new Known(purchase, unsold, purchase == null ? ofWhole(needs, search.outcome()) : List.of());
    }

    private static List<Finding> ofWhole(RunNeeds needs, PlanOutcome outcome) {
        return outcome instanceof PlanOutcome.Impossible impossible
                ? impossible.shortfalls().stream()
                        .filter(shortfall -> shortfall.item() < 0)
                        .map(shortfall -> shortfall(needs, List.of(), shortfall))
                        .toList()
                : List.of();
    }

    /** What cannot be bought of what is offered; all of it where the search does not say. */
    private static Map<Source, Finding> shortages(RunNeeds needs, List<Source> bought, PlanOutcome outcome) {
        Map<Source, Finding> shortages = new LinkedHashMap<>();
        if (outcome instanceof PlanOutcome.Impossible impossible) {
            for (PlanOutcome.Shortfall shortfall : impossible.shortfalls()) {
                if (shortfall.item() >= 0) {
                    shortages.put(bought.get(shortfall.item()), shortfall(needs, bought, shortfall));
                }
            }
            if (shortages.isEmpty()) {
                Finding why = shortfall(needs, bought, impossible.shortfalls().get(0));
                bought.forEach(source -> shortages.put(source, why));
            }
        } else {
            Finding why = Finding.error(needs.run().origin(), CostMessages.noPurchaseInTime(needs.title()));
            bought.forEach(source -> shortages.put(source, why));
        }
        return shortages;
    }

    private Outcome plan(RunNeeds needs, List<Source> bought) {
        Search search = search(needs, bought);
        Purchase purchase = search.purchase();
        return purchase != null
                ? new Outcome(purchase, List.of())
                : new Outcome(null, problems(needs, bought, search.outcome()));
    }

    /** A search with its question. */
    private record Search(PurchaseProblem problem, List<Listing> listings, PlanOutcome outcome) {

        /** What was found; null for nothing. */
        @Nullable Purchase purchase() {
            if (outcome instanceof PlanOutcome.Proven proven) {
                return new Purchase(problem, listings, proven.plan(), proven.cost(), proven.bound(), true);
            }
            if (outcome instanceof PlanOutcome.BestSoFar best) {
                return new Purchase(problem, listings, best.plan(), best.cost(), best.bound(), false);
            }
            return null;
        }
    }

    private Search search(RunNeeds needs, List<Source> bought) {
        List<Listing> listings = new ArrayList<>(2 * bought.size());
        List<Quote> quotes = new ArrayList<>(2 * bought.size());
        List<Need> wanted = new ArrayList<>(bought.size());
        for (Source source : bought) {
            quotes.addAll(source.offered().quotes().forNeed(wanted.size()));
            listings.addAll(source.offered().listings());
            wanted.add(need(needs, source.item(), source.offered()));
        }
        PurchaseProblem problem = PurchaseProblem.once(wanted, market.vendors(), quotes);
        return new Search(problem, listings, planner.plan(problem, limits));
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

    private static List<Finding> problems(RunNeeds needs, List<Source> bought, PlanOutcome outcome) {
        if (outcome instanceof PlanOutcome.Impossible impossible) {
            return impossible.shortfalls().stream()
                    .map(shortfall -> shortfall(needs, bought, shortfall))
                    .toList();
        }
        return List.of(Finding.error(needs.run().origin(), CostMessages.noPurchaseInTime(needs.title())));
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
