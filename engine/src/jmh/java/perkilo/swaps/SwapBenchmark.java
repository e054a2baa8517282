package perkilo.swaps;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import perkilo.model.Book;
import perkilo.ordering.CheapestPlan;
import perkilo.ordering.sets.QuickPlanner;
import perkilo.purchasing.SearchLimits;
import perkilo.swaps.lp.OjalgoSolver;

/** How long it takes to look for swaps in a rich formula, with the whole shipped catalogue to choose from. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class SwapBenchmark {

    private final Book book = DemoBook.richCream();

    /** Whether joint swaps are sought as well. */
    @Param({"false", "true"})
    boolean blends;

    @Benchmark
    public SwapOutcome twentyFiveLines() {
        return new SwapFinder(new QuickPlanner(new CheapestPlan()), SearchLimits.usual(), new OjalgoSolver())
                .find(book, SwapOptions.usual().withBlends(blends));
    }
}
