package perkilo.purchasing.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import perkilo.purchasing.PlanCheck;
import perkilo.purchasing.PlanOutcome;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.SearchLimits;

/**
 * Problems whose least cost several solvers have proven independently of each other (SCIP, CBC, HiGHS, CP-SAT, GLPK and
 * others, named line by line in {@code optimal_values.csv}).
 */
final class PublishedInstancesTest {

    @ParameterizedTest(name = "{0} costs {6}")
    @CsvFileSource(resources = "instances/optimal_values.csv", numLinesToSkip = 1)
    void the_published_optimum_is_found_and_proven(
            String name, String size, int materials, int offers, int suppliers, int periods, BigDecimal optimum) {
        Instance instance = Instance.read(name);
        PurchaseProblem problem = instance.problem();
        assertThat(problem.needs()).hasSize(materials);
        assertThat(problem.quotes()).hasSize(offers);
        assertThat(problem.vendors()).hasSize(suppliers);
        assertThat(problem.periods()).isEqualTo(periods);

        PlanOutcome outcome = new CheapestPlan().plan(problem, SearchLimits.usual());

        assertThat(outcome).isInstanceOf(PlanOutcome.Proven.class);
        PlanOutcome.Proven proven = (PlanOutcome.Proven) outcome;
        assertThat(proven.cost().objective()).isCloseTo(optimum, within(new BigDecimal("0.005")));
        assertThat(PlanCheck.violations(problem, proven.plan())).isEmpty();
        assertThat(new InstanceCost(instance, proven.plan()).total())
                .isCloseTo(proven.cost().objective(), within(new BigDecimal("1e-12")));
    }
}
