package perkilo.purchasing.search;

import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import perkilo.purchasing.PlanCheck;
import perkilo.purchasing.PlanCost;
import perkilo.purchasing.Preference;
import perkilo.purchasing.PurchasePlan;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.SearchLimits;

/**
 * Looks, among plans that cost no more, for one that a buyer would rather carry out
 * ({@link perkilo.purchasing.Preference}): one change after another, until none helps.
 *
 * <p>The search looks at the cost alone. If neither stock nor an order costs anything, it may buy in many small lines.
 */
final class Consolidation {
    /** The most changes that are looked at. */
    private static final int LOOKS = 20_000;
    /** The most time, as a part (1/10) of the time allowed for the search. */
    private static final int PART = 10;

    private final PurchaseProblem problem;
    private final SearchMarket market;
    private final Rearrangements rearrangements;
    private final Omissions omissions;
    private final Deadline deadline;
    private int looks;

    Consolidation(Planning planning, SearchLimits limits) {
        market = planning.market;
        problem = market.problem;
        rearrangements = new Rearrangements(market);
        omissions = new Omissions(planning);
        deadline = new Deadline(new SearchLimits(limits.time().dividedBy(PART), limits.cancelled()));
    }

    /** The plan that replaces one that was found; the same plan if nothing helps. */
    PurchasePlan of(PurchasePlan found) {
        Draft draft = Draft.of(market, found);
        Draft before;
        do {
            before = draft;
            for (int order = 0; order < market.orders.count; order++) {
                draft = improved(draft, order, this::changesOfOrder);
            }
            for (int item = 0; item < market.items.size(); item++) {
                draft = improved(draft, item, this::changesOfItem);
            }
        } while (draft != before);
        PurchasePlan plan = draft.plan();
        return isBetter(plan, found) ? plan : found;
    }

    private Stream<Change> changesOfOrder(Draft draft, int order) {
        return draft.isPlaced(order)
                ? Stream.concat(rearrangements.ofOrder(draft, order), later(() -> omissions.ofOrder(draft, order)))
                : Stream.empty();
    }

    private Stream<Change> changesOfItem(Draft draft, int item) {
        return Stream.concat(rearrangements.ofItem(draft, item), later(() -> omissions.ofItem(draft, item)));
    }

    /** Changes that take long to make; they are made only when asked for. */
    private Stream<Change> later(Supplier<Stream<Change>> changes) {
        return Stream.of(changes).filter(any -> goesOn()).flatMap(Supplier::get);
    }

    /** The draft after helpful changes, one after another, until none helps. */
    private Draft improved(Draft draft, int index, Changes changes) {
        Draft best = draft;
        Optional<Draft> better = Optional.of(draft);
        while (better.isPresent()) {
            best = better.get();
            better = changes.of(best, index)
                    .takeWhile(change -> goesOn())
                    .map(best::with)
                    .flatMap(Optional::stream)
                    .findFirst();
        }
        return best;
    }

    private boolean goesOn() {
        looks++;
        return looks <= LOOKS && !deadline.over();
    }

    /** Whether a plan is better; it is costed and checked as a whole, by code that the changes do not use. */
    private boolean isBetter(PurchasePlan plan, PurchasePlan found) {
        PlanCost cost = PlanCost.of(problem, plan);
        PlanCost before = PlanCost.of(problem, found);
        return cost.objective().compareTo(before.objective()) <= 0
                && Preference.of(problem, plan, cost).isBetterThan(Preference.of(problem, found, before))
                && PlanCheck.violations(problem, plan, cost).isEmpty();
    }

    /** The changes of a plan that concern one order or item. */
    @FunctionalInterface
    private interface Changes {
        Stream<Change> of(Draft draft, int index);
    }
}
