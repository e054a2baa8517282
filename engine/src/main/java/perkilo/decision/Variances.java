package perkilo.decision;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import perkilo.costing.CostOutcome;
import perkilo.costing.RunAnswer;
import perkilo.costing.RunCost;
import perkilo.costing.RunNeeds;
import perkilo.names.Names;

/**
 * The runs of two costings, side by side.
 *
 * @param runs those that are complete in both, in the order of the first
 * @param unmatched the titles of runs that are in one of the two only, or not complete in one of them
 */
public record Variances(List<Variance> runs, List<String> unmatched) {

    public Variances {
        runs = List.copyOf(runs);
        unmatched = List.copyOf(unmatched);
    }

    /** Compares the runs of the same product and size. Both must have the same home currency. */
    public static Variances between(CostOutcome.Costed before, CostOutcome.Costed after) {
        Map<String, RunAnswer> earlier = byKey(before);
        Map<String, RunAnswer> later = byKey(after);
        List<Variance> runs = new ArrayList<>();
        List<String> unmatched = new ArrayList<>();
        earlier.forEach((key, old) -> {
            RunAnswer now = later.get(key);
            RunCost was = old.cost();
            RunCost is = now == null ? null : now.cost();
            if (now != null && was != null && is != null && old.isComplete() && now.isComplete()) {
                runs.add(new VarianceSteps(before, was, after, is).variance());
            } else {
                unmatched.add(old.title());
            }
        });
        later.forEach((key, now) -> {
            if (!earlier.containsKey(key)) {
                unmatched.add(now.title());
            }
        });
        return new Variances(runs, unmatched);
    }

    /** The first run of each product and size. */
    private static Map<String, RunAnswer> byKey(CostOutcome.Costed costed) {
        Map<String, RunAnswer> all = new LinkedHashMap<>();
        for (RunAnswer answer : costed.answers()) {
            all.putIfAbsent(key(answer), answer);
        }
        return all;
    }

    private static String key(RunAnswer answer) {
        RunCost cost = answer.cost();
        if (cost == null) {
            return Names.key(answer.title());
        }
        RunNeeds needs = cost.needs();
        BigDecimal units = needs.units();
        return (units == null ? "bulk " : "") + Names.key(needs.name()) + " " + needs.title();
    }

    /** A part of all runs together, for the whole runs. */
    public BigDecimal whole(Variance.Part part) {
        BigDecimal sum = BigDecimal.ZERO;
        for (Variance run : runs) {
            sum = sum.add(run.part(part).multiply(run.measure()));
        }
        return sum;
    }

    /** What all runs cost together as they were: the cost of one before, for the measure of after. */
    public BigDecimal wholeBefore() {
        BigDecimal sum = BigDecimal.ZERO;
        for (Variance run : runs) {
            sum = sum.add(run.ofOneBefore().multiply(run.measure()));
        }
        return sum;
    }

    /** What all runs cost together as they are. */
    public BigDecimal wholeAfter() {
        BigDecimal sum = BigDecimal.ZERO;
        for (Variance run : runs) {
            sum = sum.add(run.ofOneAfter().multiply(run.measure()));
        }
        return sum;
    }
}
