package perkilo.orderplan;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import perkilo.costing.Market;
import perkilo.model.Supplier;
import perkilo.purchasing.LineCost;
import perkilo.purchasing.PlanPurchases;
import perkilo.purchasing.SearchLimits;

/**
 * Finds the reasons for a plan by computing its alternatives.
 *
 * <p>To cost a plan without an offer, supplier or minimum, it plans again. The cost of a change, with everything else
 * unchanged, is computed exactly. The same book gets the same questions on every machine, and, if the work is limited
 * in steps instead of by the clock, the same answers. What is not answered within the limits stays without an answer.
 */
public final class WhyThis {

    private static final int MINIMUMS_SHOWN = 10;
    private static final BigDecimal CENT = new BigDecimal("0.005");

    private final PlanPurchases planner;
    private final Limits limits;

    /**
     * Answers from a planner.
     *
     * @param planner finds the other plans
     * @param limits of the questions
     */
    public WhyThis(PlanPurchases planner, Limits limits) {
        this.planner = planner;
        this.limits = limits;
    }

    /**
     * The limits of the questions.
     *
     * @param each for one new plan
     * @param inAll for all new plans together
     * @param steps the most steps of all searches together; one new plan gets at most twice its even share of those
     *     that are left
     * @param items the most items
     * @param suppliers the most suppliers
     * @param minimums the most packs and minimums
     */
    public record Limits(SearchLimits each, Duration inAll, long steps, int items, int suppliers, int minimums) {

        /** The steps of the usual work. Own choice: a few seconds for a plan of a few dozen orders. */
        private static final long USUAL_STEPS = 600;

        /** Questions of the usual work; each takes time of its own, however few steps it needs. Own choice. */
        private static final int USUAL_ITEMS = 8;

        private static final int USUAL_SUPPLIERS = 5;
        private static final int USUAL_MINIMUMS = 6;

        private static final int MOST_ITEMS = 25;
        private static final int MOST_SUPPLIERS = 15;
        private static final int MOST_MINIMUMS = 20;

        /** The parts of the time; one new plan gets one of them at most. */
        private static final int PARTS = 6;

        private static final Duration NO_CLOCK = Duration.ofDays(365);

        /** Limits by the clock alone. */
        public Limits(SearchLimits each, Duration inAll, int items, int suppliers, int minimums) {
            this(each, inAll, Long.MAX_VALUE, items, suppliers, minimums);
        }

        /**
         * Limits of the work alone, a number of times the usual: the answers are the same on every machine.
         *
         * @param times at least one
         * @param cancelled asked now and then; true ends all
         */
        public static Limits ofWork(int times, BooleanSupplier cancelled) {
            return new Limits(
                    new SearchLimits(NO_CLOCK, cancelled),
                    NO_CLOCK,
                    USUAL_STEPS * times,
                    (int) Math.min(MOST_ITEMS, (long) USUAL_ITEMS * times),
                    (int) Math.min(MOST_SUPPLIERS, (long) USUAL_SUPPLIERS * times),
                    (int) Math.min(MOST_MINIMUMS, (long) USUAL_MINIMUMS * times));
        }

        /** The usual limits: each new plan gets at most a sixth of the time. */
        public static Limits within(Duration inAll) {
            return within(inAll, () -> false);
        }

        /**
         * The same, for questions that may be stopped; the rest then stay without an answer.
         *
         * @param cancelled asked now and then; true ends all
         */
        public static Limits within(Duration inAll, BooleanSupplier cancelled) {
            return new Limits(
                    new SearchLimits(inAll.dividedBy(PARTS), cancelled),
                    inAll,
                    MOST_ITEMS,
                    MOST_SUPPLIERS,
                    MOST_MINIMUMS);
        }
    }

    /** The reasons for a plan. */
    public Reasons of(OrderOutcome.Planned planned) {
        OrderPlan plan = planned.plan();
        List<Integer> items = items(plan);
        List<Integer> vendors = vendors(plan);
        List<Minimums.Candidate> minimums = new Minimums(planned.market(), plan).candidates();
        int questions = first(vendors, limits.suppliers()).size()
                + first(minimums, limits.minimums()).size();
        for (int item : first(items, limits.items())) {
            questions += plan.basis().packsOf(item, plan.plan()).size();
        }
        Replanning replanning = new Replanning(planner, limits, plan, questions);
        int leftOut = beyond(items, limits.items())
                + beyond(vendors, limits.suppliers())
                + beyond(minimums, limits.minimums());
        ChangedPlans changed = new ChangedPlans(plan);
        return new Reasons(
                first(items, limits.items()).stream()
                        .flatMap(item -> nextBest(plan, replanning, item).stream())
                        .toList(),
                first(vendors, limits.suppliers()).stream()
                        .map(vendor -> without(planned.market(), plan, replanning, vendor))
                        .toList(),
                changed.shifts(),
                changed.morePacks(),
                minimums(replanning, first(minimums, limits.minimums())),
                leftOut);
    }

    /** One answer for each chosen offer of an item. */
    private static List<Reasons.NextBest> nextBest(OrderPlan plan, Replanning replanning, int item) {
        return plan.basis().packsOf(item, plan.plan()).stream()
                .map(chosen -> nextBest(plan, replanning, item, chosen))
                .toList();
    }

    private static Reasons.NextBest nextBest(OrderPlan plan, Replanning replanning, int item, Reasons.Packs chosen) {
        Replanning.Answer answer =
                replanning.without(quote -> plan.basis().listings().get(quote).equals(chosen.listing()));
        return new Reasons.NextBest(
                item,
                chosen,
                answer.plan().map(other -> plan.basis().packsOf(item, other)).orElse(List.of()),
                answer.difference());
    }

    private static Reasons.Without without(Market market, OrderPlan plan, Replanning replanning, int vendor) {
        Supplier supplier = market.suppliers().get(vendor);
        List<SupplierOrder> orders = plan.orders().stream()
                .filter(order -> plan.basis().supplierOf(order.cost().vendor()) == vendor)
                .toList();
        return new Reasons.Without(
                supplier,
                orders.size(),
                landed(plan, vendor),
                replanning
                        .without(quote -> plan.basis()
                                        .supplierOf(plan.basis()
                                                .problem()
                                                .quotes()
                                                .get(quote)
                                                .vendor())
                                == vendor)
                        .difference());
    }

    private static List<Reasons.Minimum> minimums(Replanning replanning, List<Minimums.Candidate> candidates) {
        List<Reasons.Minimum> hurting = new ArrayList<>();
        for (Minimums.Candidate candidate : candidates) {
            Difference difference = replanning.with(candidate.relaxed()).difference();
            if (difference instanceof Difference.Costs costs
                    && costs.cost().negate().compareTo(CENT) >= 0) {
                hurting.add(new Reasons.Minimum(
                        candidate.kind(),
                        candidate.supplier(),
                        candidate.listing(),
                        candidate.stated(),
                        costs.cost().negate(),
                        costs.cash().negate(),
                        costs.proven()));
            }
        }
        hurting.sort(Comparator.comparing(Reasons.Minimum::saves).reversed());
        return first(hurting, MINIMUMS_SHOWN);
    }

    /** The items that are bought, the most expensive first. */
    private static List<Integer> items(OrderPlan plan) {
        return IntStream.range(0, plan.stock().size())
                .boxed()
                .filter(item -> !linesOf(plan, item).isEmpty())
                .sorted(Comparator.comparing((Integer item) -> sum(linesOf(plan, item)))
                        .reversed()
                        .thenComparing(Comparator.naturalOrder()))
                .toList();
    }

    private static List<Integer> vendors(OrderPlan plan) {
        return plan.cost().orders().stream()
                .map(order -> plan.basis().supplierOf(order.vendor()))
                .distinct()
                .sorted(Comparator.comparing((Integer vendor) -> landed(plan, vendor))
                        .reversed()
                        .thenComparing(Comparator.naturalOrder()))
                .toList();
    }

    private static BigDecimal landed(OrderPlan plan, int vendor) {
        return plan.cost().orders().stream()
                .filter(order -> plan.basis().supplierOf(order.vendor()) == vendor)
                .map(order -> order.landed())
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static List<LineCost> linesOf(OrderPlan plan, int item) {
        return IntStream.range(0, plan.days().size())
                .boxed()
                .flatMap(period -> plan.purchases(item, period).stream())
                .toList();
    }

    private static BigDecimal sum(List<LineCost> lines) {
        return lines.stream().map(LineCost::landed).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static <T> List<T> first(List<T> things, int most) {
        return things.subList(0, Math.min(most, things.size()));
    }

    private static int beyond(List<?> things, int most) {
        return Math.max(0, things.size() - most);
    }
}
