package perkilo.purchasing.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import perkilo.purchasing.Need;
import perkilo.purchasing.PlanOutcome;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.Quote;
import perkilo.purchasing.SearchLimits;
import perkilo.purchasing.Vendor;

/** What happens to the least cost when a problem gets easier or harder. */
final class ChangedProblemsProperties {
    private static final double HALF_A_CENT = 0.005;

    @Property(tries = 60)
    void a_quote_less_never_costs_less(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        PurchaseProblem problem = SmallProblems.random(seed);
        List<Quote> quotes = new ArrayList<>(problem.quotes());
        quotes.remove((int) (seed % quotes.size()));
        assertThat(leastCost(with(problem, problem.needs(), problem.vendors(), quotes)))
                .isGreaterThan(leastCost(problem) - HALF_A_CENT);
    }

    @Property(tries = 60)
    void a_higher_minimum_order_value_never_costs_less(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        PurchaseProblem problem = SmallProblems.random(seed);
        List<Vendor> vendors = problem.vendors().stream()
                .map(vendor -> vendor.minimumOrderValue().signum() > 0 ? demanding(vendor) : vendor)
                .toList();
        assertThat(leastCost(with(problem, problem.needs(), vendors, problem.quotes())))
                .isGreaterThan(leastCost(problem) - HALF_A_CENT);
    }

    @Property(tries = 60)
    void stock_on_the_shelf_never_costs_more(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        PurchaseProblem problem = SmallProblems.random(seed);
        List<Need> bare =
                problem.needs().stream().map(need -> withStock(need, List.of())).toList();
        List<Need> stocked = problem.needs().stream()
                .map(need -> withStock(need, List.of(new Need.Lot(BigDecimal.ONE, problem.periods()))))
                .toList();
        assertThat(leastCost(with(problem, stocked, problem.vendors(), problem.quotes())))
                .isLessThan(leastCost(with(problem, bare, problem.vendors(), problem.quotes())) + HALF_A_CENT);
    }

    private static double leastCost(PurchaseProblem problem) {
        PlanOutcome outcome = new CheapestPlan().plan(problem, SearchLimits.usual());
        if (outcome instanceof PlanOutcome.Proven proven) {
            return proven.cost().objective().doubleValue();
        }
        assertThat(outcome).isInstanceOf(PlanOutcome.Impossible.class);
        return 1e9;
    }

    private static PurchaseProblem with(
            PurchaseProblem problem, List<Need> needs, List<Vendor> vendors, List<Quote> quotes) {
        return new PurchaseProblem(
                problem.periods(), needs, vendors, quotes, problem.cashPerPeriod(), problem.cashTotal());
    }

    private static Vendor demanding(Vendor vendor) {
        return new Vendor(
                vendor.name(),
                vendor.toHome(),
                vendor.margin(),
                vendor.freightPerOrder(),
                vendor.freightPerKg(),
                vendor.insurance(),
                vendor.minimumOrderValue().multiply(new BigDecimal("1.3")),
                vendor.smallOrderCharge(),
                vendor.dutyBasis());
    }

    /** Without holding, so that what lies on the shelf costs nothing to keep. */
    private static Need withStock(Need need, List<Need.Lot> stock) {
        return new Need(
                need.item(),
                need.perPeriod(),
                stock,
                need.usablePeriods(),
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                BigDecimal.ZERO);
    }
}
