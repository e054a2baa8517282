package perkilo.purchasing.search;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import perkilo.purchasing.Need;
import perkilo.purchasing.OrderCost;
import perkilo.purchasing.PlanCheck;
import perkilo.purchasing.PlanCost;
import perkilo.purchasing.PlanOutcome;
import perkilo.purchasing.Preference;
import perkilo.purchasing.PurchasePlan;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.Quote;
import perkilo.purchasing.SearchLimits;
import perkilo.purchasing.Vendor;

/**
 * Small problems in which neither keeping stock nor placing an order costs anything, so that many plans cost the same.
 */
final class ConsolidationProperties {

    @Property(tries = 300)
    void a_plan_gets_no_dearer_and_keeps_every_rule(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        PurchaseProblem problem = seed % 4 == 0 ? SmallProblems.random(seed) : free(SmallProblems.random(seed));
        Planning planning = new Planning(new SearchMarket(problem));
        Assume.that(new Uncoverable(planning).shortfalls().isEmpty());
        new BranchAndBound(planning, new Deadline(SearchLimits.usual())).search();
        Assume.that(planning.incumbent.best() != null);
        PurchasePlan found = requireNonNull(planning.incumbent.best()).plan();
        PlanCost before = PlanCost.of(problem, found);

        PurchasePlan plan = new Consolidation(planning, SearchLimits.usual()).of(found);

        PlanCost cost = PlanCost.of(problem, plan);
        assertThat(PlanCheck.violations(problem, plan)).isEmpty();
        assertThat(cost.objective()).isLessThanOrEqualTo(before.objective());
        assertThat(Preference.of(problem, found, before).isBetterThan(Preference.of(problem, plan, cost)))
                .isFalse();
    }

    @Property(tries = 200)
    void no_two_orders_to_one_vendor_could_be_one_for_as_little(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        PurchaseProblem problem = free(SmallProblems.random(seed));
        PlanOutcome outcome = new CheapestPlan().plan(problem, SearchLimits.usual());
        if (outcome instanceof PlanOutcome.Proven proven) {
            assertThat(proven.bound()).isLessThanOrEqualTo(proven.cost().objective());
            for (OrderCost one : proven.cost().orders()) {
                for (OrderCost other : proven.cost().orders()) {
                    if (one.vendor() == other.vendor() && one.period() != other.period()) {
                        assertThat(costsNoMore(problem, proven, merged(problem, proven.plan(), one, other.period())))
                                .as("%s into %s of %s", one.period(), other.period(), proven.plan())
                                .isFalse();
                    }
                }
            }
        }
    }

    private static boolean costsNoMore(PurchaseProblem problem, PlanOutcome.Proven proven, PurchasePlan plan) {
        return PlanCheck.violations(problem, plan).isEmpty()
                && PlanCost.of(problem, plan)
                                .objective()
                                .compareTo(proven.cost().objective())
                        <= 0;
    }

    private static PurchasePlan merged(PurchaseProblem problem, PurchasePlan plan, OrderCost order, int period) {
        Map<Integer, Long> there = new TreeMap<>();
        List<PurchasePlan.Line> lines = new ArrayList<>();
        for (PurchasePlan.Line line : plan.lines()) {
            boolean same = problem.quotes().get(line.quote()).vendor() == order.vendor();
            if (same && (line.period() == order.period() || line.period() == period)) {
                there.merge(line.quote(), line.packs(), Long::sum);
            } else {
                lines.add(line);
            }
        }
        there.forEach((quote, packs) -> lines.add(new PurchasePlan.Line(quote, period, packs)));
        return new PurchasePlan(lines);
    }

    /** The same problem with nothing charged for stock and for orders, and some prices that end. */
    private static PurchaseProblem free(PurchaseProblem problem) {
        List<Need> needs = problem.needs().stream()
                .map(need -> new Need(
                        need.item(),
                        need.perPeriod(),
                        need.stock(),
                        need.usablePeriods(),
                        BigDecimal.ZERO,
                        need.creditPerUnit(),
                        need.creditable()))
                .toList();
        List<Vendor> vendors = problem.vendors().stream()
                .map(vendor -> new Vendor(
                        vendor.name(),
                        vendor.toHome(),
                        vendor.margin(),
                        BigDecimal.ZERO,
                        vendor.freightPerKg(),
                        vendor.insurance(),
                        vendor.minimumOrderValue(),
                        vendor.smallOrderCharge(),
                        vendor.dutyBasis()))
                .toList();
        List<Quote> quotes = problem.quotes().stream()
                .map(quote -> quote.item() % 2 == 0 ? quote.heldUntil(quote.firstPeriod()) : quote)
                .toList();
        return new PurchaseProblem(
                problem.periods(), needs, vendors, quotes, problem.cashPerPeriod(), problem.cashTotal());
    }
}
