package perkilo.purchasing.search;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import perkilo.oracle.Solver;
import perkilo.purchasing.PlanCost;
import perkilo.purchasing.PlanOutcome;
import perkilo.purchasing.PlanPurchases;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.SearchLimits;
import perkilo.purchasing.search.oracle.PurchaseModel;
import perkilo.purchasing.search.oracle.SampleMarket;

/**
 * The planner's time to a proven plan against a general solver's, problem by problem in one run.
 *
 * <p>Arguments: sizes by name (default: all), a number: how many problems of each size (default 3), and {@code alone}
 * to leave the solver out. Run it with {@code -Xmx512m}: the planner must not need more.
 */
public final class PlannerAgainstCbc {
    private static final int SECONDS = 60;

    private PlannerAgainstCbc() {}

    /** Prints one row a problem. */
    public static void main(String[] args) {
        int seeds = Arrays.stream(args)
                .filter(arg -> arg.matches("\\d+"))
                .mapToInt(Integer::parseInt)
                .findFirst()
                .orElse(3);
        boolean alone = List.of(args).contains("alone");
        new CheapestPlan()
                .plan(SampleMarket.of(SampleMarket.Size.SHOP, 99), SearchLimits.within(Duration.ofSeconds(5)));
        print("problem", "seed", "seconds", "cost", "gap %", "proven", "cbc s", "cbc cost", "ratio");
        for (SampleMarket.Size size : SampleMarket.Size.values()) {
            boolean asked = Arrays.stream(args).noneMatch(arg -> arg.matches("[A-Z_]+"))
                    || List.of(args).contains(size.name());
            for (int seed = 1; asked && seed <= seeds; seed++) {
                compare(size, seed, alone);
            }
        }
    }

    private static void compare(SampleMarket.Size size, int seed, boolean alone) {
        PurchaseProblem problem = SampleMarket.of(size, seed);
        PlanPurchases planner = new CheapestPlan();
        long start = System.nanoTime();
        PlanOutcome outcome = planner.plan(problem, SearchLimits.within(Duration.ofSeconds(SECONDS)));
        double seconds = (System.nanoTime() - start) / 1e9;
        String cost = outcome.getClass().getSimpleName();
        double gap = Double.NaN;
        if (outcome instanceof PlanOutcome.Proven proven) {
            cost = proven.cost().objective().toPlainString();
            gap = 0;
        } else if (outcome instanceof PlanOutcome.BestSoFar best) {
            double objective = best.cost().objective().doubleValue();
            cost = best.cost().objective().toPlainString();
            gap = 100 * (objective - best.bound().doubleValue()) / objective;
        }
        if (alone) {
            print(size, seed, seconds, shortened(cost), gap, outcome instanceof PlanOutcome.Proven, "", "", "");
            return;
        }
        PurchaseModel model = new PurchaseModel(problem);
        Solver.Answer answer = Solver.CBC.solve(model.text(), SECONDS);
        String theirs = answer.values().isEmpty()
                ? "none"
                : PlanCost.of(problem, model.plan(answer.values())).objective().toPlainString();
        print(
                size,
                seed,
                seconds,
                shortened(cost),
                gap,
                outcome instanceof PlanOutcome.Proven,
                answer.seconds(),
                shortened(theirs) + (answer.optimal() ? "" : " not proven"),
                seconds / answer.seconds());
    }

    private static String shortened(String decimal) {
        int point = decimal.indexOf('.');
        return point < 0 ? decimal : decimal.substring(0, Math.min(decimal.length(), point + 5));
    }

    private static void print(Object... cells) {
        StringBuilder row = new StringBuilder();
        for (Object cell : cells) {
            String text = cell instanceof Double d ? String.format(Locale.ROOT, "%.3f", d) : cell.toString();
            row.append(String.format(Locale.ROOT, "%-24s", text).substring(0, row.length() == 0 ? 24 : 17));
        }
        System.out.println(row.toString().stripTrailing());
    }
}
