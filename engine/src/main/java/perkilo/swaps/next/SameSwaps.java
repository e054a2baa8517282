package perkilo.swaps.next;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import perkilo.costing.RunCost;
import perkilo.costing.RunCoster;
import perkilo.costing.RunNeeds;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.swaps.Rejected;
import perkilo.swaps.Swap;
import perkilo.swaps.SwapOutcome;
import perkilo.swaps.money.RunChange;
import perkilo.swaps.money.RunsOfFormula;
import perkilo.swaps.trial.Trial;

/** Finds swaps that can be made in several formulas, and what they save if the formulas' runs are bought together. */
final class SameSwaps {

    /** Each is costed with several plans for all its formulas; so many are enough to choose from. */
    static final int MOST = 10;

    private final SwapOutcome.Found found;
    private final RunCoster coster;
    private final Map<List<RunNeeds>, Optional<RunCost>> together = new HashMap<>();

    SameSwaps(SwapOutcome.Found found, RunCoster coster) {
        this.found = found;
        this.coster = coster;
    }

    /** A swap by its two materials. */
    private record Pair(String from, String to) {

        static Pair of(Trial trial) {
            return new Pair(Names.key(trial.from().name()), Names.key(trial.to().name()));
        }
    }

    /** The best of them, by their rank in the list of swaps. */
    List<SameSwap> best() {
        Map<Pair, List<Integer>> numbers = new LinkedHashMap<>();
        for (int i = 0; i < found.swaps().size(); i++) {
            numbers.computeIfAbsent(Pair.of(found.swaps().get(i).trial()), any -> new ArrayList<>())
                    .add(i + 1);
        }
        List<SameSwap> best = new ArrayList<>();
        for (Map.Entry<Pair, List<Integer>> each : numbers.entrySet()) {
            if (best.size() < MOST && formulasWith(each.getKey().from()).size() > 1) {
                of(each.getKey(), each.getValue()).ifPresent(best::add);
            }
        }
        return best;
    }

    private List<Formula> formulasWith(String material) {
        Book book = found.book();
        return found.base().keySet().stream()
                .flatMap(name -> book.formula(name).stream())
                .filter(formula -> formula.lines().stream()
                        .anyMatch(line -> Names.key(line.material()).equals(material)
                                && formula.levelOf(line).signum() > 0))
                .toList();
    }

    private Optional<SameSwap> of(Pair pair, List<Integer> numbers) {
        List<SameSwap.Part> parts = new ArrayList<>();
        List<SameSwap.Left> left = new ArrayList<>();
        for (Formula formula : formulasWith(pair.from())) {
            SameSwap.Part part = part(formula, pair, left);
            if (part != null) {
                parts.add(part);
            }
        }
        if (parts.size() < 2) {
            return Optional.empty();
        }
        List<SameSwap.Rank> ranks = ranks(parts);
        Trial first = parts.get(0).trial();
        Material from = first.from();
        return ranks.isEmpty()
                ? Optional.empty()
                : Optional.of(new SameSwap(from, first.to(), numbers, parts, left, ranks));
    }

    /** The formula's part; null if the swap does not fit there, which is added to what is left. */
    private SameSwap.@Nullable Part part(Formula formula, Pair pair, List<SameSwap.Left> left) {
        String key = Names.key(formula.name());
        for (Swap swap : found.swaps()) {
            if (Names.key(swap.formula().name()).equals(key)
                    && Pair.of(swap.trial()).equals(pair)) {
                return new SameSwap.Part(swap.trial(), bySize(swap.runs()));
            }
        }
        String why = "";
        for (Rejected rejected : found.rejected()) {
            boolean same = Names.key(rejected.trial().before().formula().name()).equals(key)
                    && Pair.of(rejected.trial()).equals(pair);
            if (same && rejected.fits()) {
                Optional<List<RunChange>> runs = new RunsOfFormula(
                                found.book(), coster, found.base().getOrDefault(formula.name(), Map.of()))
                        .changes(rejected.trial().after().formula());
                if (runs.isPresent()) {
                    return new SameSwap.Part(rejected.trial(), bySize(runs.get()));
                }
            }
            why = same && why.isEmpty() ? rejected.reason() : why;
        }
        left.add(new SameSwap.Left(formula.name(), why));
        return null;
    }

    private static List<RunChange> bySize(List<RunChange> runs) {
        return runs.stream()
                .sorted(Comparator.comparing(
                        run -> run.before().needs().batches().charged()))
                .toList();
    }

    private List<SameSwap.Rank> ranks(List<SameSwap.Part> parts) {
        List<SameSwap.Rank> ranks = new ArrayList<>();
        int most = parts.stream().mapToInt(part -> part.runs().size()).max().orElse(0);
        for (int rank = 0; rank < most; rank++) {
            List<RunChange> alone = new ArrayList<>();
            for (SameSwap.Part part : parts) {
                if (rank < part.runs().size()) {
                    alone.add(part.runs().get(rank));
                }
            }
            Optional<RunCost> now =
                    together(alone.stream().map(run -> run.before().needs()).toList());
            Optional<RunCost> then =
                    together(alone.stream().map(run -> run.after().needs()).toList());
            if (alone.size() > 1 && now.isPresent() && then.isPresent()) {
                ranks.add(new SameSwap.Rank(alone, now.get(), then.get()));
            }
        }
        return ranks;
    }

    private Optional<RunCost> together(List<RunNeeds> runs) {
        return together.computeIfAbsent(
                runs,
                any -> Optional.ofNullable(
                        coster.cost(RunNeeds.boughtTogether(runs)).cost()));
    }
}
