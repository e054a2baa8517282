package perkilo.purchasing.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.jspecify.annotations.Nullable;
import perkilo.Ratio;
import perkilo.purchasing.DutyBasis;
import perkilo.purchasing.Need;
import perkilo.purchasing.PlanCheck;
import perkilo.purchasing.PlanOutcome;
import perkilo.purchasing.PurchasePlan;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.Quote;
import perkilo.purchasing.Steps;
import perkilo.purchasing.Tier;
import perkilo.purchasing.Vendor;
import perkilo.purchasing.search.quick.QuickPlanner;

/**
 * Orders whose lines have several rates of duty: each line pays its own on its share of freight per order and of the
 * small-order charge. Every plan is tried, and costed in fractions.
 */
final class MixedDutyProperties {
    private static final PlanOutcome LEFT = new PlanOutcome.NoneFound(BigDecimal.ZERO);

    /** In one period for a run, or over two for a plan of orders. */
    @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
    void the_proven_plan_is_the_cheapest_of_all(@ForAll @LongRange(min = 0, max = 1_000_000_000L) long seed) {
        PurchaseProblem problem = new Random(seed).nextBoolean() ? problem(seed, 1, 4, 1) : problem(seed, 2, 2, 1);

        assertCheapest(problem, new CheapestPlan().plan(problem, Steps.most(20_000)));
    }

    @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
    void the_quick_planner_finds_it_too(@ForAll @LongRange(min = 0, max = 1_000_000_000L) long seed) {
        PurchaseProblem problem = problem(seed, 1, 4, 1);

        assertCheapest(problem, new QuickPlanner(new CheapestPlan()).plan(problem, Steps.most(20_000)));
    }

    /** Lines are worth more than the duty on the charges here, so that it mostly needs no planner behind it. */
    @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
    void the_quick_planner_alone_proves_the_cheapest_of_all(
            @ForAll @LongRange(min = 0, max = 1_000_000_000L) long seed) {
        PurchaseProblem problem = problem(seed, 1, 4, 8);

        PlanOutcome outcome = new QuickPlanner((other, limits) -> LEFT).plan(problem, Steps.most(20_000));

        if (outcome instanceof PlanOutcome.Proven) {
            assertCheapest(problem, outcome);
        }
    }

    /** Of many such problems, few are left to the planner behind it; those without need for an item all are. */
    @Example
    void the_quick_planner_leaves_few_to_the_planner_behind_it() {
        int asked = 0;
        int left = 0;
        for (long seed = 0; seed < 300; seed++) {
            PurchaseProblem problem = problem(seed, 1, 4, 8);
            if (problem.needs().stream().allMatch(need -> need.total().signum() > 0)) {
                asked++;
                PlanOutcome outcome = new QuickPlanner((other, limits) -> LEFT).plan(problem, Steps.most(20_000));
                left += outcome instanceof PlanOutcome.Proven ? 0 : 1;
            }
        }
        assertThat(asked).isGreaterThan(120);
        assertThat(left).isLessThan(asked / 4);
    }

    /**
     * Freight of 1,000 for x kg of goods at 1 and 0 %, and goods of 10 at 50 %: x + 10 + 5 + 1,000 + 1,000 · 5 / (x +
     * 10) is least at x + 10 = √5,000 = 70.7. Ten are needed; more is bought for the duty alone.
     */
    @Example
    void more_than_needed_is_bought_where_that_lowers_the_duty() {
        Vendor vendor = Buying.vendor("freight", "1000");
        List<Quote> quotes = List.of(quote(0, "1", "0", "0.00"), quote(1, "10", "0", "0.50"));
        PurchaseProblem problem = PurchaseProblem.once(
                List.of(Need.once("cheap", BigDecimal.TEN), Need.once("dear", BigDecimal.ONE)),
                List.of(vendor),
                quotes);

        PlanOutcome.Proven found = (PlanOutcome.Proven) new CheapestPlan().plan(problem, Steps.most(20_000));

        assertThat(found.plan().lines().get(0).packs()).isEqualTo(61);
        assertThat(found.cost().objective()).isCloseTo(new BigDecimal("1146.42"), within(new BigDecimal("0.005")));
    }

    private static void assertCheapest(PurchaseProblem problem, PlanOutcome outcome) {
        EveryPlan every = new EveryPlan(problem);
        if (!(outcome instanceof PlanOutcome.Proven proven)) {
            assertThat(outcome).isInstanceOf(PlanOutcome.Impossible.class);
            assertThat(every.least).isNull();
            return;
        }
        assertThat(PlanCheck.violations(problem, proven.plan())).isEmpty();
        Ratio cost = every.cost(packs(problem, proven.plan()));
        assertThat(cost).isNotNull();
        cost.assertIs(proven.cost().objective(), "objective");
        Ratio least = every.least;
        if (least == null) {
            // a minimum order value that takes more packs than were tried
            assertThat(proven.plan().lines()).anyMatch(line -> line.packs() > every.most);
            return;
        }
        assertThat(cost.minus(least)).isLessThan(Ratio.of("0.005"));
        assertThat(Ratio.of(proven.bound())).isLessThan(least.plus(Ratio.of("0.000001")));
    }

    private static int[] packs(PurchaseProblem problem, PurchasePlan plan) {
        int[] packs = new int[problem.quotes().size() * problem.periods()];
        for (PurchasePlan.Line line : plan.lines()) {
            packs[line.quote() * problem.periods() + line.period()] = (int) line.packs();
        }
        return packs;
    }

    /**
     * A random problem.
     *
     * @param most the most that is needed of an item in a period
     * @param dearness goods and minimums are worth so many times as much, charges are not; above one, keeping stock
     *     costs nothing, as in a run
     */
    private static PurchaseProblem problem(long seed, int periods, int most, int dearness) {
        Random random = new Random(seed);
        int items = 2 + random.nextInt(2);
        int vendors = 1 + random.nextInt(2);
        List<Need> needs = new ArrayList<>();
        for (int i = 0; i < items; i++) {
            List<BigDecimal> perPeriod = new ArrayList<>();
            for (int t = 0; t < periods; t++) {
                perPeriod.add(BigDecimal.valueOf(random.nextInt(most + 1)));
            }
            needs.add(new Need(
                    "item " + i,
                    perPeriod,
                    List.of(),
                    Need.UNLIMITED,
                    BigDecimal.valueOf(random.nextInt(dearness > 1 ? 1 : 3), 2),
                    BigDecimal.ZERO,
                    BigDecimal.ZERO));
        }
        List<Vendor> sellers = new ArrayList<>();
        for (int v = 0; v < vendors; v++) {
            boolean charges = random.nextBoolean();
            sellers.add(vendor(
                    Integer.toString(random.nextInt(60)),
                    random.nextBoolean() ? "0" : Integer.toString((10 + random.nextInt(50)) * dearness),
                    charges ? Integer.toString(random.nextInt(40)) : null,
                    random.nextInt(3) > 0 ? DutyBasis.CIF : DutyBasis.FOB));
        }
        List<Quote> quotes = new ArrayList<>();
        for (int q = 0; q < (periods == 1 ? items + 2 : items + random.nextInt(2)); q++) {
            quotes.add(quote(
                    q < items ? q : random.nextInt(items),
                    random.nextInt(vendors),
                    random.nextInt(12) == 0 ? "0" : Integer.toString((3 + random.nextInt(20)) * dearness),
                    random.nextInt(3) == 0 ? "3" : "0",
                    List.of("0", "0.065", "0.2", "0.9").get(random.nextInt(4))));
        }
        return new PurchaseProblem(periods, needs, sellers, quotes, null, null);
    }

    private static Vendor vendor(String perOrder, String minimum, @Nullable String charge, DutyBasis basis) {
        return new Vendor(
                "vendor",
                new BigDecimal("0.9"),
                new BigDecimal("0.02"),
                new BigDecimal(perOrder),
                new BigDecimal("0.25"),
                new BigDecimal("0.01"),
                new BigDecimal(minimum),
                charge == null ? null : new BigDecimal(charge),
                basis);
    }

    private static Quote quote(int item, String price, String breakAt, String duty) {
        return quote(item, 0, price, breakAt, duty);
    }

    /** Packs of one unit; from {@code breakAt} on, if above zero, they cost a fifth less. */
    private static Quote quote(int item, int vendor, String price, String breakAt, String duty) {
        BigDecimal full = new BigDecimal(price);
        List<Tier> tiers = new ArrayList<>();
        tiers.add(new Tier(BigDecimal.ZERO, full));
        if (!breakAt.equals("0")) {
            tiers.add(new Tier(new BigDecimal(breakAt), full.multiply(new BigDecimal("0.8"))));
        }
        return new Quote(
                item,
                vendor,
                BigDecimal.ONE,
                BigDecimal.ONE,
                1,
                BigDecimal.ZERO,
                tiers,
                new BigDecimal(duty),
                BigDecimal.ONE,
                2,
                0,
                Integer.MAX_VALUE);
    }

    /** All plans with up to so many packs of a quote in a period that more can't pay, in fractions. */
    private static final class EveryPlan {
        private final PurchaseProblem problem;
        private final int most;
        private @Nullable Ratio least;

        EveryPlan(PurchaseProblem problem) {
            this.problem = problem;
            int needed = problem.needs().stream()
                    .mapToInt(need -> need.total().intValueExact())
                    .max()
                    .orElseThrow();
            int quotes = problem.quotes().size() * problem.periods();
            most = Math.max(needed + 1, quotes <= 3 ? 9 : quotes == 4 ? 6 : 4);
            choose(new int[quotes], 0);
        }

        private void choose(int[] packs, int at) {
            if (at == packs.length) {
                Ratio cost = cost(packs);
                if (cost != null && (least == null || cost.compareTo(least) < 0)) {
                    least = cost;
                }
                return;
            }
            for (int n = 0; n <= most; n++) {
                packs[at] = n;
                choose(packs, at + 1);
            }
            packs[at] = 0;
        }

        /** The cost of a plan; null if it is not possible. */
        @Nullable Ratio cost(int[] packs) {
            Ratio total = holding(packs);
            for (int v = 0; total != null && v < problem.vendors().size(); v++) {
                for (int t = 0; total != null && t < problem.periods(); t++) {
                    Ratio order = order(packs, v, t);
                    total = order == null ? null : total.plus(order);
                }
            }
            return total;
        }

        private @Nullable Ratio holding(int[] packs) {
            Ratio holding = Ratio.ZERO;
            for (int i = 0; i < problem.needs().size(); i++) {
                Need need = problem.needs().get(i);
                long inStock = 0;
                for (int t = 0; t < problem.periods(); t++) {
                    for (int q = 0; q < problem.quotes().size(); q++) {
                        inStock += problem.quotes().get(q).item() == i ? packs[q * problem.periods() + t] : 0;
                    }
                    inStock -= need.perPeriod().get(t).longValueExact();
                    if (inStock < 0) {
                        return null;
                    }
                    holding = holding.plus(Ratio.of(inStock).times(Ratio.of(need.holdingPerUnit())));
                }
            }
            return holding;
        }

        /** As the method says it: Σ of each line's duty on its goods, insurance, freight by weight and share. */
        private @Nullable Ratio order(int[] packs, int vendorIndex, int period) {
            Vendor vendor = problem.vendors().get(vendorIndex);
            List<Ratio> goods = new ArrayList<>();
            List<Ratio> rates = new ArrayList<>();
            List<Ratio> freights = new ArrayList<>();
            for (int q = 0; q < problem.quotes().size(); q++) {
                Quote quote = problem.quotes().get(q);
                int n = packs[q * problem.periods() + period];
                if (quote.vendor() == vendorIndex && n > 0) {
                    List<Tier> tiers = quote.tiers();
                    boolean reached = tiers.size() > 1 && tiers.get(1).from().intValueExact() <= n;
                    goods.add(Ratio.of(n)
                            .times(Ratio.of(tiers.get(reached ? 1 : 0).pricePerPack()))
                            .halfUp(2));
                    rates.add(Ratio.of(quote.duty()));
                    freights.add(Ratio.of(n).times(Ratio.of(vendor.freightPerKg())));
                }
            }
            if (goods.isEmpty()) {
                return Ratio.ZERO;
            }
            Ratio all = Ratio.sum(goods.stream());
            boolean small = all.compareTo(Ratio.of(vendor.minimumOrderValue())) < 0;
            BigDecimal charge = vendor.smallOrderCharge();
            if (small && charge == null) {
                return null;
            }
            Ratio extra = small && charge != null ? Ratio.of(charge) : Ratio.ZERO;
            Ratio once = Ratio.of(vendor.freightPerOrder());
            boolean cif = vendor.dutyBasis() == DutyBasis.CIF;
            Ratio insured = Ratio.ONE.plus(Ratio.of(vendor.insurance()));
            Ratio duty = Ratio.ZERO;
            Ratio paid = once.plus(extra);
            for (int l = 0; l < goods.size(); l++) {
                Ratio share = all.isZero()
                        ? Ratio.ONE.by(Ratio.of(goods.size()))
                        : goods.get(l).by(all);
                Ratio own = cif ? goods.get(l).times(insured).plus(freights.get(l)) : goods.get(l);
                Ratio shared = (cif ? once.plus(extra) : extra).times(share);
                duty = duty.plus(rates.get(l).times(own.plus(shared)));
                paid = paid.plus(goods.get(l).times(insured)).plus(freights.get(l));
            }
            return paid.times(Ratio.ONE.plus(Ratio.of(vendor.margin())))
                    .plus(duty)
                    .times(Ratio.of(vendor.toHome()));
        }
    }
}
