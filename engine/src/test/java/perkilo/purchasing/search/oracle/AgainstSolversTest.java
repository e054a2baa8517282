package perkilo.purchasing.search.oracle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import perkilo.oracle.Solver;
import perkilo.purchasing.Need;
import perkilo.purchasing.PlanCheck;
import perkilo.purchasing.PlanCost;
import perkilo.purchasing.PlanOutcome;
import perkilo.purchasing.PurchasePlan;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.SearchLimits;
import perkilo.purchasing.search.CheapestPlan;
import perkilo.purchasing.search.oracle.SampleMarket.Size;
import perkilo.purchasing.search.quick.QuickPlanner;

/**
 * The planner against general solvers on problems far too large to try every plan: both must prove the same cost.
 *
 * <p>The solver's plan is checked and costed by the engine as well, so that a model which forgot a rule would show.
 */
@Tag("oracle")
final class AgainstSolversTest {
    private static final int FIRST_SECONDS = 15;
    private static final int SECONDS = 1_800;

    static Stream<Arguments> problems() {
        return Stream.of(
                        problems(Size.FEW, Solver.GLPSOL, 1, 8),
                        problems(Size.FEW, Solver.CBC, 13, 20),
                        problems(Size.FEW_MIXED, Solver.CBC, 1, 6),
                        problems(Size.QUARTER_MIXED, Solver.CBC, 1, 4),
                        problems(Size.SHOP, Solver.CBC, 1, 3),
                        problems(Size.TIGHT_SHOP, Solver.CBC, 1, 6),
                        problems(Size.QUARTER, Solver.CBC, 1, 6))
                .flatMap(some -> some);
    }

    private static Stream<Arguments> problems(Size size, Solver solver, int first, int last) {
        return Stream.iterate(first, seed -> seed <= last, seed -> seed + 1)
                .map(seed -> Arguments.of(size, seed, solver));
    }

    @ParameterizedTest(name = "{0}, problem {1}, {2}")
    @MethodSource("problems")
    void both_prove_the_same_cost(Size size, int seed, Solver solver) {
        PurchaseProblem problem = SampleMarket.of(size, seed);
        BigDecimal theirs = leastCost(problem, solver);
        assertProven(new CheapestPlan().plan(problem, SearchLimits.usual()), problem, theirs);
    }

    @ParameterizedTest(name = "{0}, problem {1}, {2}")
    @MethodSource("fewVendors")
    void what_the_quick_planner_proves_is_the_same_cost(Size size, int seed, Solver solver) {
        PurchaseProblem problem = SampleMarket.of(size, seed);
        BigDecimal theirs = leastCost(problem, solver);
        PlanOutcome outcome = new QuickPlanner(new CheapestPlan()).plan(problem, SearchLimits.usual());
        if (outcome instanceof PlanOutcome.BestSoFar best) {
            assertThat(best.cost().objective()).isGreaterThanOrEqualTo(theirs.subtract(new BigDecimal("0.005")));
            assertThat(best.bound()).isLessThanOrEqualTo(theirs.add(new BigDecimal("0.005")));
        } else {
            assertProven(outcome, problem, theirs);
        }
    }

    static Stream<Arguments> quarters() {
        return problems(Size.QUARTER, Solver.CBC, 1, 4);
    }

    /** Each item gets a lot that comes in the second or third month and expires at some time after. */
    @ParameterizedTest(name = "{0}, problem {1}, {2}")
    @MethodSource("quarters")
    void both_prove_the_same_cost_with_goods_on_order(Size size, int seed, Solver solver) {
        PurchaseProblem problem = withGoodsOnOrder(SampleMarket.of(size, seed), new Random(seed));
        assertProven(new CheapestPlan().plan(problem, SearchLimits.usual()), problem, leastCost(problem, solver));
    }

    private static PurchaseProblem withGoodsOnOrder(PurchaseProblem problem, Random random) {
        List<Need> needs = problem.needs().stream()
                .map(need -> {
                    int arrival = 1 + random.nextInt(2);
                    List<Need.Lot> stock = new ArrayList<>(need.stock());
                    stock.add(new Need.Lot(need.perPeriod().get(arrival), arrival, random.nextInt(4)));
                    return new Need(
                            need.item(),
                            need.perPeriod(),
                            stock,
                            need.usablePeriods(),
                            need.holdingPerUnit(),
                            need.creditPerUnit(),
                            need.creditable());
                })
                .toList();
        return new PurchaseProblem(problem.periods(), needs, problem.vendors(), problem.quotes(), null, null);
    }

    static Stream<Arguments> fewVendors() {
        return Stream.concat(problems(Size.FEW, Solver.GLPSOL, 25, 32), problems(Size.FEW_MIXED, Solver.CBC, 7, 12));
    }

    /**
     * What the solver's plan costs, exactly; nothing is cheaper by more than half a cent. A solver that does not come
     * to an end soon is given up for the stronger one.
     */
    private static BigDecimal leastCost(PurchaseProblem problem, Solver solver) {
        PurchaseModel model = new PurchaseModel(problem);
        Solver.Answer soon = solver.solve(model.text(), FIRST_SECONDS);
        Solver.Answer answer = soon.optimal() ? soon : Solver.CBC.solve(model.text(), SECONDS);
        assertThat(answer.optimal())
                .as("a solver says that its plan is the cheapest")
                .isTrue();
        PurchasePlan plan = model.plan(answer.values());
        assertThat(PlanCheck.violations(problem, plan)).isEmpty();
        return PlanCost.of(problem, plan).objective();
    }

    private static void assertProven(PlanOutcome outcome, PurchaseProblem problem, BigDecimal least) {
        assertThat(outcome).isInstanceOf(PlanOutcome.Proven.class);
        PlanOutcome.Proven proven = (PlanOutcome.Proven) outcome;
        assertThat(proven.cost().objective()).isCloseTo(least, within(new BigDecimal("0.01")));
        assertThat(PlanCheck.violations(problem, proven.plan())).isEmpty();
    }
}
