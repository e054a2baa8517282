package perkilo.purchasing.search.quick;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.jspecify.annotations.Nullable;
import perkilo.purchasing.DutyBasis;
import perkilo.purchasing.Need;
import perkilo.purchasing.PlanCheck;
import perkilo.purchasing.PlanCost;
import perkilo.purchasing.PlanOutcome;
import perkilo.purchasing.PlanPurchases;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.Quote;
import perkilo.purchasing.Steps;
import perkilo.purchasing.Tier;
import perkilo.purchasing.Vendor;
import perkilo.purchasing.search.CheapestPlan;

/** The quick planner finds what the planner finds, on small random markets with minimum order values. */
final class QuickPlannerProperties {

    /** By vendor: one rate, so that the quick planner proves what it can without the planner behind it. */
    private static final List<BigDecimal> DUTIES =
            List.of(new BigDecimal("0.03"), BigDecimal.ZERO, new BigDecimal("0.065"), new BigDecimal("0.01"));

    @Property(tries = 150)
    void a_proven_plan_costs_what_the_planner_proves(@ForAll @IntRange(max = 1_000_000) int seed) {
        PurchaseProblem problem = market(new Random(seed));

        PlanOutcome quick = alone().plan(problem, Steps.most(20_000));
        PlanOutcome exact = new CheapestPlan().plan(problem, Steps.most(20_000));

        if (quick instanceof PlanOutcome.Proven found && exact instanceof PlanOutcome.Proven proven) {
            assertThat(PlanCheck.violations(problem, found.plan())).isEmpty();
            assertThat(found.cost()
                            .objective()
                            .subtract(proven.cost().objective())
                            .abs())
                    .isLessThan(new BigDecimal("0.01"));
        } else if (quick instanceof PlanOutcome.BestSoFar found && exact instanceof PlanOutcome.Proven proven) {
            assertThat(PlanCheck.violations(problem, found.plan())).isEmpty();
            assertThat(found.bound())
                    .isLessThanOrEqualTo(proven.cost().objective().add(new BigDecimal("0.01")));
        } else if (quick instanceof PlanOutcome.NoneFound) {
            assertThat(exact instanceof PlanOutcome.Impossible
                            || problem.needs().stream()
                                    .anyMatch(need -> need.creditPerUnit().signum() > 0))
                    .isTrue();
        }
    }

    /** Each offer has a rate of duty of its own, so that an order's charges pay an average. */
    @Property(tries = 100)
    void with_several_rates_of_duty_too(@ForAll @IntRange(max = 1_000_000) int seed) {
        Random random = new Random(seed);
        PurchaseProblem market = market(random);
        PurchaseProblem problem = PurchaseProblem.once(
                market.needs(),
                market.vendors(),
                market.quotes().stream()
                        .map(quote -> withDuty(quote, DUTIES.get(random.nextInt(4))))
                        .toList());

        assertCostsWhatThePlannerProves(alone().plan(problem, Steps.most(20_000)), problem);
    }

    /** Leftovers are worth up to half of what the cheapest pack costs, and each offer has a rate of duty of its own. */
    @Property(tries = 100)
    void with_several_rates_of_duty_and_leftovers_of_some_value(@ForAll @IntRange(max = 1_000_000) int seed) {
        Random random = new Random(seed);
        PurchaseProblem problem = withCredits(market(random), random);

        assertCostsWhatThePlannerProves(alone().plan(problem, Steps.most(20_000)), problem);
    }

    @Example
    void plans_with_leftovers_of_some_value_are_proven_where_duty_differs_by_line() {
        int proven = 0;
        for (int seed = 0; seed < 50; seed++) {
            Random random = new Random(seed);
            PlanOutcome outcome = alone().plan(withCredits(market(random), random), Steps.most(20_000));
            proven += outcome instanceof PlanOutcome.Proven ? 1 : 0;
        }
        assertThat(proven).isGreaterThan(40);
    }

    private static PurchaseProblem withCredits(PurchaseProblem market, Random random) {
        List<Quote> quotes = market.quotes().stream()
                .map(quote -> withDuty(quote, DUTIES.get(random.nextInt(4))))
                .toList();
        List<Need> needs = new ArrayList<>();
        for (int item = 0; item < market.needs().size(); item++) {
            needs.add(withCredit(market.needs().get(item), lowestPrice(item, quotes, market.vendors()), random));
        }
        return PurchaseProblem.once(needs, market.vendors(), quotes);
    }

    private static BigDecimal lowestPrice(int item, List<Quote> quotes, List<Vendor> vendors) {
        return quotes.stream()
                .filter(quote -> quote.item() == item)
                .flatMap(quote -> quote.tiers().stream()
                        .map(tier -> tier.pricePerPack()
                                .multiply(vendors.get(quote.vendor()).toHome())
                                .divide(quote.packSize(), MathContext.DECIMAL64)))
                .min(BigDecimal::compareTo)
                .orElseThrow();
    }

    private static Need withCredit(Need need, BigDecimal lowestPrice, Random random) {
        return new Need(
                need.item(),
                List.of(need.total()),
                List.of(),
                Need.UNLIMITED,
                BigDecimal.ZERO,
                lowestPrice.multiply(decimal(random.nextInt(51), 2)),
                need.total().multiply(BigDecimal.TEN));
    }

    private static void assertCostsWhatThePlannerProves(PlanOutcome quick, PurchaseProblem problem) {
        if (quick instanceof PlanOutcome.Proven found) {
            PlanOutcome exact = new CheapestPlan().plan(problem, Steps.most(5_000));
            assertThat(PlanCheck.violations(problem, found.plan())).isEmpty();
            if (exact instanceof PlanOutcome.Proven proven) {
                assertThat(found.cost().objective())
                        .isCloseTo(proven.cost().objective(), within(new BigDecimal("0.005")));
            }
        }
    }

    /** Many vendors, most of them with several of the items, and up to ten of them with one. */
    @Property(tries = 25)
    void with_more_vendors_too(@ForAll @IntRange(max = 1_000_000) int seed) {
        Random random = new Random(seed);
        List<Vendor> sellers = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            sellers.add(vendor("vendor " + i, random));
        }
        List<Need> needs = new ArrayList<>();
        List<Quote> quotes = new ArrayList<>();
        for (int item = 0; item < 4; item++) {
            needs.add(need("item " + item, false, random));
            for (int vendor = 0; vendor < sellers.size(); vendor++) {
                if (item == 0 || random.nextBoolean()) {
                    quotes.add(quote(item, vendor, random));
                }
            }
        }
        PurchaseProblem problem = PurchaseProblem.once(needs, sellers, quotes);

        PlanOutcome quick = alone().plan(problem, Steps.most(20_000));

        assertThat(quick).isNotInstanceOf(PlanOutcome.NoneFound.class);
        assertCostsWhatThePlannerProves(quick, problem);
    }

    /** A purchase that is planned first is where the next ones start, which differ in one item. */
    @Property(tries = 60)
    void what_differs_in_one_item_costs_what_it_costs_alone(@ForAll @IntRange(max = 1_000_000) int seed) {
        Random random = new Random(seed);
        PurchaseProblem base = market(random);
        PlanPurchases shared = alone();
        shared.plan(base, Steps.most(20_000));
        for (int item = 0; item < base.needs().size(); item++) {
            List<Need> needs = new ArrayList<>(base.needs());
            needs.set(item, times(needs.get(item), 1 + random.nextInt(30)));
            PurchaseProblem other = PurchaseProblem.once(needs, base.vendors(), base.quotes());
            PlanOutcome after = shared.plan(other, Steps.most(20_000));
            PlanOutcome anew = alone().plan(other, Steps.most(20_000));
            if (anew instanceof PlanOutcome.Proven proven) {
                assertThat(after)
                        .isInstanceOfSatisfying(
                                PlanOutcome.Proven.class,
                                found -> assertThat(found.cost().objective())
                                        .isCloseTo(proven.cost().objective(), within(new BigDecimal("0.005"))));
            }
        }
    }

    private static Quote withDuty(Quote quote, BigDecimal duty) {
        return new Quote(
                quote.item(),
                quote.vendor(),
                quote.packSize(),
                quote.kgPerPack(),
                quote.multiple(),
                quote.minimum(),
                quote.tiers(),
                duty,
                quote.toVendorCurrency(),
                quote.minorDigits(),
                quote.firstPeriod(),
                quote.lastPeriod());
    }

    /** Two packs at one price: in either order the smaller is taken, as long as it suffices. */
    @Example
    void of_two_packs_that_cost_the_same_the_one_that_leaves_less_is_taken() {
        for (List<String> sizes : List.of(List.of("6", "10"), List.of("10", "6"))) {
            List<Quote> quotes = new ArrayList<>();
            for (String size : sizes) {
                quotes.add(plain(new BigDecimal(size), new BigDecimal("50")));
            }
            PurchaseProblem problem =
                    PurchaseProblem.once(List.of(Need.once("wax", new BigDecimal("6"))), List.of(free()), quotes);
            PlanOutcome.Proven found = (PlanOutcome.Proven) alone().plan(problem, Steps.most(20_000));
            int bought = found.plan().lines().get(0).quote();
            assertThat(quotes.get(bought).packSize()).isEqualByComparingTo("6");
        }
    }

    private static Vendor free() {
        return new Vendor(
                "vendor",
                BigDecimal.ONE,
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                null,
                DutyBasis.CIF);
    }

    private static Quote plain(BigDecimal packSize, BigDecimal price) {
        return new Quote(
                0,
                0,
                packSize,
                packSize,
                1,
                BigDecimal.ZERO,
                List.of(new Tier(BigDecimal.ZERO, price)),
                BigDecimal.ZERO,
                BigDecimal.ONE,
                2,
                0,
                0);
    }

    /** What the planner remembers of one purchase does not show in the next from the same market. */
    @Property(tries = 100)
    void a_plan_costs_what_it_costs_worked_out_anew(@ForAll @IntRange(max = 1_000_000) int seed) {
        PurchaseProblem market = market(new Random(seed));
        PlanPurchases planner = alone();
        for (int times : new int[] {1, 2, 1, 50}) {
            PurchaseProblem problem = PurchaseProblem.once(
                    market.needs().stream().map(need -> times(need, times)).toList(),
                    market.vendors(),
                    market.quotes());
            PlanOutcome outcome = planner.plan(problem, Steps.most(20_000));
            if (outcome instanceof PlanOutcome.Proven found) {
                assertThat(found.cost()).isEqualTo(PlanCost.of(problem, found.plan()));
            } else if (outcome instanceof PlanOutcome.BestSoFar found) {
                assertThat(found.cost()).isEqualTo(PlanCost.of(problem, found.plan()));
            } else {
                assertThat(problem.needs())
                        .anyMatch(need -> need.creditPerUnit().signum() > 0);
            }
        }
    }

    private static Need times(Need need, int times) {
        return new Need(
                need.item(),
                List.of(need.total().multiply(BigDecimal.valueOf(times))),
                List.of(),
                need.usablePeriods(),
                need.holdingPerUnit(),
                need.creditPerUnit(),
                need.creditable());
    }

    /** Nine packs reach the minimum at 900; from ten on a pack costs 80, and eleven reach it at 880. */
    @Example
    void a_better_price_beyond_what_first_reaches_the_minimum_is_found() {
        Vendor vendor = new Vendor(
                "one",
                BigDecimal.ONE,
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                new BigDecimal("850"),
                null,
                DutyBasis.FOB);
        List<Tier> tiers = List.of(
                new Tier(BigDecimal.ZERO, new BigDecimal("100")), new Tier(BigDecimal.TEN, new BigDecimal("80")));
        Quote quote = new Quote(
                0,
                0,
                BigDecimal.ONE,
                BigDecimal.ONE,
                1,
                BigDecimal.ZERO,
                tiers,
                BigDecimal.ZERO,
                BigDecimal.ONE,
                2,
                0,
                0);
        PurchaseProblem problem =
                PurchaseProblem.once(List.of(Need.once("item", BigDecimal.ONE)), List.of(vendor), List.of(quote));

        assertThat(alone().plan(problem, Steps.most(20_000)))
                .isInstanceOfSatisfying(
                        PlanOutcome.Proven.class,
                        found -> assertThat(found.cost().objective()).isEqualByComparingTo("880"));
    }

    /** Nobody charges for an order as a whole, so each item is planned alone: the whole must still be cheapest. */
    @Property(tries = 150)
    void a_purchase_without_order_charges_is_always_proven(@ForAll @IntRange(max = 1_000_000) int seed) {
        Random random = new Random(seed);
        List<Vendor> sellers = List.of(
                vendor("one", random).withoutOrderCharges(),
                vendor("two", random).withoutOrderCharges());
        PurchaseProblem problem = problem(sellers, random, random.nextBoolean());

        PlanOutcome quick = alone().plan(problem, Steps.most(20_000));
        PlanOutcome exact = new CheapestPlan().plan(problem, Steps.most(20_000));

        assertThat(exact).isInstanceOf(PlanOutcome.Proven.class);
        if (quick instanceof PlanOutcome.Proven found) {
            assertThat(PlanCheck.violations(problem, found.plan())).isEmpty();
            assertThat(found.cost().objective())
                    .isCloseTo(((PlanOutcome.Proven) exact).cost().objective(), within(new BigDecimal("0.01")));
        } else {
            assertThat(problem.needs()).anyMatch(need -> need.creditPerUnit().signum() > 0);
        }
    }

    /** What a planner remembers of one market must not be taken for another's, nor old prices for new ones. */
    @Property(tries = 60)
    void one_planner_serves_several_markets(@ForAll @IntRange(max = 1_000_000) int seed) {
        Random random = new Random(seed);
        List<Vendor> here = List.of(vendor("one", random), vendor("two", random));
        List<Vendor> there = List.of(vendor("one", random), vendor("two", random));
        List<PurchaseProblem> problems = List.of(
                problem(here, random, false),
                problem(there, random, false),
                problem(here, random, true),
                problem(there, random, true));
        PlanPurchases shared = alone();

        for (int round = 0; round < 2; round++) {
            for (PurchaseProblem problem : problems) {
                assertThat(shared.plan(problem, Steps.most(20_000)))
                        .isEqualTo(alone().plan(problem, Steps.most(20_000)));
            }
        }
    }

    /** A quick planner with nobody behind it: what it can't answer is not found. */
    private static QuickPlanner alone() {
        return new QuickPlanner((other, limits) -> new PlanOutcome.NoneFound(BigDecimal.ZERO));
    }

    private static PurchaseProblem market(Random random) {
        int vendors = 1 + random.nextInt(4);
        List<Vendor> sellers = new ArrayList<>();
        for (int i = 0; i < vendors; i++) {
            sellers.add(vendor("vendor " + i, random));
        }
        return problem(sellers, random, random.nextInt(3) == 0);
    }

    private static PurchaseProblem problem(List<Vendor> sellers, Random random, boolean credited) {
        List<Need> needs = new ArrayList<>();
        List<Quote> quotes = new ArrayList<>();
        int items = 1 + random.nextInt(6);
        for (int item = 0; item < items; item++) {
            needs.add(need("item " + item, credited, random));
            int offers = 1 + random.nextInt(4);
            for (int offer = 0; offer < offers; offer++) {
                quotes.add(quote(item, random.nextInt(sellers.size()), random));
            }
        }
        return PurchaseProblem.once(needs, sellers, quotes);
    }

    /** Where leftovers count for something, up to more than a pack costs from some: then the quick planner gives up. */
    private static Need need(String item, boolean credited, Random random) {
        BigDecimal quantity = decimal(1 + random.nextInt(4000), 2);
        return credited
                ? new Need(
                        item,
                        List.of(quantity),
                        List.of(),
                        Need.UNLIMITED,
                        BigDecimal.ZERO,
                        decimal(random.nextInt(250), 2),
                        random.nextBoolean() ? quantity.multiply(BigDecimal.TEN) : decimal(random.nextInt(3000), 2))
                : Need.once(item, quantity);
    }

    private static Vendor vendor(String name, Random random) {
        boolean hasMinimum = random.nextBoolean();
        @Nullable BigDecimal charge = random.nextBoolean() ? decimal(random.nextInt(4000), 2) : null;
        return new Vendor(
                name,
                decimal(80 + random.nextInt(50), 2),
                decimal(random.nextInt(3), 2),
                decimal(random.nextInt(6000), 2),
                decimal(random.nextInt(60), 2),
                decimal(random.nextInt(5), 3),
                hasMinimum ? decimal(random.nextInt(50_000), 2) : BigDecimal.ZERO,
                hasMinimum ? charge : null,
                random.nextBoolean() ? DutyBasis.CIF : DutyBasis.FOB);
    }

    private static Quote quote(int item, int vendor, Random random) {
        BigDecimal pack = BigDecimal.valueOf(List.of(1, 5, 25).get(random.nextInt(3)));
        BigDecimal price = decimal(2000 + random.nextInt(20_000), random.nextBoolean() ? 3 : 4)
                .multiply(pack);
        List<Tier> tiers = new ArrayList<>(List.of(new Tier(BigDecimal.ZERO, price)));
        if (random.nextBoolean()) {
            BigDecimal from = pack.multiply(BigDecimal.valueOf(4 + random.nextInt(17)));
            tiers.add(new Tier(from, price.multiply(decimal(60 + random.nextInt(31), 2))));
        }
        return new Quote(
                item,
                vendor,
                pack,
                pack,
                1 + random.nextInt(2),
                random.nextInt(4) == 0 ? pack.multiply(BigDecimal.valueOf(2)) : BigDecimal.ZERO,
                tiers,
                DUTIES.get(vendor % DUTIES.size()),
                BigDecimal.ONE,
                2,
                0,
                0);
    }

    private static BigDecimal decimal(int unscaled, int scale) {
        return BigDecimal.valueOf(unscaled, scale);
    }
}
