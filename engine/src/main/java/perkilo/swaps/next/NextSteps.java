package perkilo.swaps.next;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.costing.RunCoster;
import perkilo.purchasing.PlanPurchases;
import perkilo.purchasing.SearchLimits;
import perkilo.swaps.SwapOutcome;

/**
 * What a formulator asks for once swaps are found.
 *
 * @param benchGrams the size of the trial that is costed
 * @param trials what it costs to try each swap, then each blend
 * @param everywhere swaps that can be made in several formulas, the best first
 * @param emollients all emollients side by side
 * @param benches batches to weigh; none unless they are asked for
 */
public record NextSteps(
        BigDecimal benchGrams,
        List<TrialCost> trials,
        List<SameSwap> everywhere,
        EmollientComparison emollients,
        List<BenchBatch> benches) {

    public NextSteps {
        trials = List.copyOf(trials);
        everywhere = List.copyOf(everywhere);
        benches = List.copyOf(benches);
    }

    /**
     * Finds them.
     *
     * @param found the swaps
     * @param planner finds each purchase
     * @param limits for each search
     * @param material the material that is asked about; null for none
     * @param benchGrams the size of a trial
     */
    public static NextSteps of(
            SwapOutcome.Found found,
            PlanPurchases planner,
            SearchLimits limits,
            @Nullable String material,
            BigDecimal benchGrams) {
        RunCoster coster = new RunCoster(found.market(), planner, limits);
        return new NextSteps(
                benchGrams,
                new TrialCosts(found, coster, benchGrams).all(),
                new SameSwaps(found, coster).best(),
                EmollientComparison.of(found, coster, material),
                List.of());
    }

    /** The same with batches to weigh. */
    public NextSteps with(List<BenchBatch> batches) {
        return new NextSteps(benchGrams, trials, everywhere, emollients, batches);
    }
}
