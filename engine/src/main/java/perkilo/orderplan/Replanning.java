package perkilo.orderplan;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import perkilo.costing.CostMessages;
import perkilo.purchasing.PlanCost;
import perkilo.purchasing.PlanOutcome;
import perkilo.purchasing.PlanPurchases;
import perkilo.purchasing.PurchasePlan;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.Quote;
import perkilo.purchasing.SearchLimits;

/** Plans again under another rule, and compares the plans. */
final class Replanning {

    private final PlanPurchases planner;
    private final WhyThis.Limits limits;
    private final OrderPlan chosen;
    private final HorizonProblem basis;
    private final long end;
    private long stepsLeft;
    private int questionsLeft;

    /**
     * Planning again.
     *
     * @param questions how many plans will be asked for, to share out the work
     */
    Replanning(PlanPurchases planner, WhyThis.Limits limits, OrderPlan chosen, int questions) {
        this.questionsLeft = questions;
        this.planner = planner;
        this.limits = limits;
        this.chosen = chosen;
        this.basis = chosen.basis();
        this.stepsLeft = limits.steps();
        this.end = System.nanoTime() + limits.inAll().toNanos();
    }

    /**
     * The result of planning again.
     *
     * @param plan in terms of the quotes of the original problem; empty if there is none
     * @param difference from the chosen plan
     */
    record Answer(Optional<PurchasePlan> plan, Difference difference) {}

    /** A plan that leaves some quotes out. */
    Answer without(IntPredicate forbidden) {
        questionsLeft--;
        PurchaseProblem problem = basis.problem();
        List<Integer> kept = new ArrayList<>();
        List<Quote> quotes = new ArrayList<>();
        for (int quote = 0; quote < problem.quotes().size(); quote++) {
            if (!forbidden.test(quote)) {
                kept.add(quote);
                quotes.add(problem.quotes().get(quote));
            }
        }
        Set<String> unsold = unsold(quotes);
        if (!unsold.isEmpty()) {
            return new Answer(
                    Optional.empty(), new Difference.NotPossible(WhyMessages.noOtherOffer(List.copyOf(unsold))));
        }
        return ask(problem.withOffers(problem.vendors(), quotes), kept);
    }

    /** A plan for another problem with the same quotes in the same order. */
    Answer with(PurchaseProblem other) {
        questionsLeft--;
        List<Integer> all = new ArrayList<>();
        for (int quote = 0; quote < other.quotes().size(); quote++) {
            all.add(quote);
        }
        return ask(other, all);
    }

    private Set<String> unsold(List<Quote> quotes) {
        Set<Integer> sold = quotes.stream().map(Quote::item).collect(Collectors.toCollection(TreeSet::new));
        Set<String> unsold = new TreeSet<>();
        for (int item = 0; item < basis.items().size(); item++) {
            boolean missing = basis.problem().needs().get(item).net().stream().anyMatch(net -> net.signum() > 0);
            if (missing && !sold.contains(item)) {
                unsold.add(basis.items().get(item).name());
            }
        }
        return unsold;
    }

    private Answer ask(PurchaseProblem problem, List<Integer> quotes) {
        Duration left = Duration.ofNanos(end - System.nanoTime());
        if (left.isNegative()
                || left.isZero()
                || stepsLeft <= 0
                || limits.each().cancelled().getAsBoolean()) {
            return new Answer(Optional.empty(), new Difference.NotKnown());
        }
        Duration each = limits.each().time();
        Steps steps = new Steps(share(), limits.each().cancelled());
        PlanOutcome outcome = planner.plan(problem, new SearchLimits(left.compareTo(each) < 0 ? left : each, steps));
        stepsLeft -= steps.taken();
        if (outcome instanceof PlanOutcome.Proven proven) {
            return answer(proven.plan(), proven.cost(), quotes, true);
        }
        if (outcome instanceof PlanOutcome.BestSoFar best) {
            return answer(best.plan(), best.cost(), quotes, false);
        }
        if (outcome instanceof PlanOutcome.Impossible impossible) {
            return new Answer(
                    Optional.empty(),
                    new Difference.NotPossible(why(impossible.shortfalls().get(0))));
        }
        return new Answer(Optional.empty(), new Difference.NotKnown());
    }

    /** Twice an even share of the steps that are left: most plans need fewer, and leave the rest to the others. */
    private long share() {
        long even = stepsLeft / Math.max(1, questionsLeft + 1);
        return even > stepsLeft / 2 ? stepsLeft : Math.max(1, 2 * even);
    }

    private Answer answer(PurchasePlan plan, PlanCost cost, List<Integer> quotes, boolean proven) {
        PurchasePlan translated = new PurchasePlan(plan.lines().stream()
                .map(line -> new PurchasePlan.Line(quotes.get(line.quote()), line.period(), line.packs()))
                .toList());
        BigDecimal more = cost.objective().subtract(chosen.cost().objective());
        BigDecimal cash = cost.outlay().subtract(chosen.outlay());
        return new Answer(Optional.of(translated), new Difference.Costs(more, cash, proven && chosen.proven()));
    }

    private String why(PlanOutcome.Shortfall shortfall) {
        if (shortfall.item() < 0) {
            return CostMessages.shortfall(shortfall.reason(), "");
        }
        String item = basis.items().get(shortfall.item()).name();
        String when = basis.horizon().name(shortfall.period());
        return OrderMessages.shortfallOfItem(item, when, shortfall.reason(), "");
    }
}
