package perkilo.purchasing.search;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The plan of an item found last, and its total under other terms: the next plan can cost no more than that. */
final class KnownPlan {
    private final WantedItem item;
    private @Nullable Picks picks;

    KnownPlan(WantedItem item) {
        this.item = item;
    }

    void remember(Picks found) {
        picks = found;
    }

    /** The total of the plan, or of buying everything in one line if that is less; infinite if neither is allowed. */
    double total(Terms terms) {
        double oneLine = item.linksByPeriod().size() == 1 ? oneLine(terms) : Double.POSITIVE_INFINITY;
        Picks plan = picks;
        return plan == null ? oneLine : Math.min(oneLine, total(terms, plan));
    }

    private double total(Terms terms, Picks plan) {
        Map<Integer, Long> steps = new HashMap<>();
        double total = plan.cost;
        for (int l = 0; l < plan.lines(); l++) {
            steps.put(plan.offer(l), plan.steps(l));
        }
        for (var links : item.linksByPeriod()) {
            for (Link link : links) {
                total += extra(terms, link, steps);
            }
        }
        return total;
    }

    /** What the terms add to the lines in an order; infinite if they do not allow them. */
    private static double extra(Terms terms, Link link, Map<Integer, Long> steps) {
        double extra = 0;
        boolean used = false;
        for (PackChoice offer : link.offers()) {
            long n = steps.getOrDefault(offer.id, 0L);
            if (n < terms.atLeast[offer.id] || n > terms.atMost[offer.id]) {
                return Double.POSITIVE_INFINITY;
            }
            if (n > 0) {
                used = true;
                extra += terms.cost(offer, n) - offer.cost(n);
            }
        }
        return used ? extra + terms.charge[link.id()] : 0;
    }

    /** The total in a single period of the lines that have to be bought and one line for all the rest. */
    private double oneLine(Terms terms) {
        long missing = item.grid().toNeed[0][0];
        double demanded = 0;
        for (Link link : item.linksByPeriod().get(0)) {
            demanded += terms.forced(link) ? terms.charge[link.id()] : 0;
            for (PackChoice offer : link.offers()) {
                long n = demanded(terms, offer);
                missing -= n * offer.units;
                demanded += n > 0 ? terms.cost(offer, n) : 0;
            }
        }
        double least = missing <= 0 ? demanded : Double.POSITIVE_INFINITY;
        for (Link link : item.linksByPeriod().get(0)) {
            double charge = terms.forced(link) ? 0 : terms.charge[link.id()];
            for (PackChoice offer : link.offers()) {
                least = Math.min(least, demanded + charge + rest(terms, offer, missing));
            }
        }
        return least;
    }

    /** The shortest line of an offer that has to be bought; zero if none has to be bought. */
    private static long demanded(Terms terms, PackChoice offer) {
        long least = terms.atLeast[offer.id];
        return least > 0 ? Math.max(least, offer.costs.fewestSteps) : 0;
    }

    private static double rest(Terms terms, PackChoice offer, long missing) {
        long before = demanded(terms, offer);
        long filling = before + Math.max(0, (missing + offer.units - 1) / offer.units);
        long steps = Math.max(offer.costs.fewestSteps, filling);
        boolean allowed = steps <= Math.min(offer.mostSteps, terms.atMost[offer.id]);
        return allowed
                ? terms.cost(offer, steps) - (before > 0 ? terms.cost(offer, before) : 0)
                : Double.POSITIVE_INFINITY;
    }
}
