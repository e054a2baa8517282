package perkilo.swaps;

import java.util.concurrent.atomic.AtomicInteger;
import perkilo.model.Book;
import perkilo.purchasing.PlanOutcome;
import perkilo.purchasing.PlanPurchases;
import perkilo.purchasing.SearchLimits;
import perkilo.purchasing.search.CheapestPlan;
import perkilo.purchasing.search.quick.QuickPlanner;
import perkilo.swaps.lp.OjalgoSolver;

/**
 * How long it takes to look for swaps in a rich formula of 25 lines at three run sizes, with the whole shipped
 * catalogue to choose from: every line with every material that passes the gates, each with a full purchase plan at
 * every size.
 *
 * <p>With an argument {@code whole}, the formula is a cream as a maker has it, with joint swaps, with value for
 * leftovers and with several rates of duty in one order.
 *
 * <p>Joint swaps are sought as well if there is an argument {@code blends}. With an argument {@code twins}, and a
 * number of them if not five, each material has twins of other prices, which all pass the gates: many plans of a kind
 * that is hard, as the twins are sold by whoever sells the material, small needs by vendors of large minimums among
 * them. The first round holds what a command takes, the last ones what is left when all is compiled.
 */
public final class SwapBenchmark {

    private static final int ROUNDS = 5;
    private static final int TWINS = 5;

    private SwapBenchmark() {}

    /** Prints the times of each round. */
    public static void main(String[] arguments) {
        boolean blends = arguments.length > 0 && arguments[0].equals("blends");
        boolean twins = arguments.length > 0 && arguments[0].equals("twins");
        boolean whole = arguments.length > 0 && arguments[0].equals("whole");
        Book book = whole ? DemoBook.wholeCream() : DemoBook.richCream();
        if (twins) {
            book = DemoBook.richCreamWithTwins(arguments.length > 1 ? Integer.parseInt(arguments[1]) : TWINS);
        }
        for (int round = 1; round <= ROUNDS; round++) {
            AtomicInteger plans = new AtomicInteger();
            AtomicInteger full = new AtomicInteger();
            AtomicInteger unproven = new AtomicInteger();
            PlanPurchases behind = (problem, limits) -> {
                full.incrementAndGet();
                return new CheapestPlan().plan(problem, limits);
            };
            PlanPurchases quick = new QuickPlanner(behind);
            PlanPurchases counting = (problem, limits) -> {
                plans.incrementAndGet();
                PlanOutcome outcome = quick.plan(problem, limits);
                if (!(outcome instanceof PlanOutcome.Proven)) {
                    unproven.incrementAndGet();
                }
                return outcome;
            };
            long clock = System.nanoTime();
            long processor = processor();
            SwapOutcome.Found found =
                    (SwapOutcome.Found) new SwapFinder(counting, SearchLimits.usual(), new OjalgoSolver())
                            .find(book, SwapOptions.usual().withBlends(blends || whole));
            System.out.printf(
                    "%.2f s, %.2f s of processor: %,d candidates judged, %,d plans (%d unproven, %d by the full search),"
                            + " %d swaps, %d blends%n",
                    (System.nanoTime() - clock) / 1e9,
                    (processor() - processor) / 1e3,
                    found.swaps().size() + found.rejected().size(),
                    plans.get(),
                    unproven.get(),
                    full.get(),
                    found.swaps().size(),
                    found.blends().size());
        }
    }

    private static long processor() {
        return ProcessHandle.current().info().totalCpuDuration().orElseThrow().toMillis();
    }
}
