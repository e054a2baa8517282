package perkilo.decision;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntConsumer;
import org.jspecify.annotations.Nullable;
import perkilo.costing.CostOutcome;
import perkilo.costing.ItemCost;
import perkilo.costing.Listing;
import perkilo.costing.Market;
import perkilo.costing.RunCost;
import perkilo.costing.RunCoster;
import perkilo.costing.RunNeeds;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Product;
import perkilo.model.Run;
import perkilo.names.Names;
import perkilo.offers.Offer;
import perkilo.origin.Decimals;
import perkilo.purchasing.LineCost;
import perkilo.purchasing.PlanPurchases;
import perkilo.purchasing.SearchLimits;
import perkilo.swaps.ChangesTogether;
import perkilo.swaps.Swap;
import perkilo.swaps.SwapOutcome;
import perkilo.swaps.blend.Blend;

/**
 * Finds what brings the cost of a unit down to what it may be: run sizes, swaps, blends, and other offers than the
 * purchase with the least outlay takes. Every set of them is costed as a whole, with a purchase plan of its own.
 */
public final class TargetSearch {

    /** The most changes in a set. */
    public static final int MOST = 3;

    /** So many of each kind are combined: those with the greatest effect. Own choice. */
    private static final int OF_EACH_KIND = 12;

    /** The most sets of two or three that are planned for one run. Own choice. */
    static final int MOST_SETS = 60;

    private final CostOutcome.Costed costed;
    private final Map<String, SizeAdvice> sizes;
    private final SwapOutcome.@Nullable Found swaps;
    private final PlanPurchases planner;
    private final SearchLimits limits;

    private TargetSearch(
            CostOutcome.Costed costed,
            List<SizeAdvice> sizes,
            SwapOutcome.@Nullable Found swaps,
            PlanPurchases planner,
            SearchLimits limits) {
        this.costed = costed;
        this.sizes = new LinkedHashMap<>();
        sizes.forEach(one -> this.sizes.put(Names.key(one.product().name()), one));
        this.swaps = swaps;
        this.planner = planner;
        this.limits = limits;
    }

    /**
     * The complete runs of products that have a target retail price and a target margin and cost more than they may.
     */
    public static List<RunCost> open(CostOutcome.Costed costed) {
        return costed.runs().stream()
                .filter(cost -> {
                    BigDecimal allowed = allowed(cost);
                    return allowed != null && Measure.ofOne(cost).compareTo(allowed) > 0;
                })
                .toList();
    }

    /**
     * The target cost of each complete run whose product has a target retail price and a target margin.
     *
     * @param sizes the sizes from which units cost less
     * @param swaps found in the formulas; null if none were looked for
     * @param progress receives the number of runs that are done, after each
     */
    public static List<TargetCost> of(
            CostOutcome.Costed costed,
            List<SizeAdvice> sizes,
            SwapOutcome.@Nullable Found swaps,
            PlanPurchases planner,
            SearchLimits limits,
            IntConsumer progress) {
        TargetSearch search = new TargetSearch(costed, sizes, swaps, planner, limits);
        List<TargetCost> all = new ArrayList<>();
        int done = 0;
        for (RunCost cost : costed.runs()) {
            BigDecimal allowed = allowed(cost);
            if (allowed != null) {
                all.add(search.target(cost, allowed));
            }
            progress.accept(++done);
        }
        return all;
    }

    private static @Nullable BigDecimal allowed(RunCost cost) {
        Product product = cost.needs().product();
        return product == null ? null : TargetCost.allowed(product);
    }

    /**
     * A change of a run that can be combined with others.
     *
     * @param units another size; null for the same
     * @param swap in its formula; null for none
     * @param blend in its formula; null for none
     * @param offer the only one for its item; null for all
     */
    private record Change(
            TargetMove.Kind kind,
            String what,
            List<String> cautions,
            @Nullable BigDecimal units,
            @Nullable Swap swap,
            @Nullable Blend blend,
            @Nullable Offer offer) {

        /** Two sizes, two blends, two swaps of one line, or two offers for one item cannot be combined. */
        boolean goesWith(Change other) {
            return !(units != null && other.units != null)
                    && !(blend != null && other.blend != null)
                    && !isOfSameLine(swap, other.swap)
                    && !isOfSameItem(offer, other.offer);
        }

        boolean isOfRecipe() {
            return swap != null || blend != null;
        }

        private static boolean isOfSameLine(@Nullable Swap one, @Nullable Swap other) {
            return one != null
                    && other != null
                    && one.trial().line() == other.trial().line();
        }

        private static boolean isOfSameItem(@Nullable Offer one, @Nullable Offer other) {
            return one != null && other != null && Names.key(one.item()).equals(Names.key(other.item()));
        }
    }

    /** A change with its effect alone. */
    private record Tried(Change change, TargetMove move) {}

    private TargetCost target(RunCost cost, BigDecimal allowed) {
        Product product = Objects.requireNonNull(cost.needs().product());
        var retail = Objects.requireNonNull(product.targetRetailPrice());
        if (Measure.ofOne(cost).compareTo(allowed) <= 0) {
            return new TargetCost(cost, retail, allowed, List.of(), List.of(), cost, TargetCost.Sets.NONE);
        }
        List<Tried> tried = new ArrayList<>();
        for (Change change : changes(cost, product)) {
            RunCost alone = cost(cost, List.of(change), List.of());
            if (alone != null) {
                BigDecimal effect = Measure.ofOne(alone).subtract(Measure.ofOne(cost));
                if (effect.signum() < 0) {
                    TargetMove move = new TargetMove(change.kind(), change.what(), change.cautions(), alone, effect);
                    tried.add(new Tried(change, move));
                }
            }
        }
        tried.sort(Comparator.comparing(one -> one.move().effect()));
        Best best = new Best(cost, allowed);
        tried.forEach(one -> best.offer(List.of(one), one.move().alone(), List.of()));
        TargetCost.Sets sets = combine(pool(tried, allowed), best);
        return new TargetCost(
                cost, retail, allowed, tried.stream().map(Tried::move).toList(), best.moves(), best.after, sets);
    }

    private List<Change> changes(RunCost cost, Product product) {
        List<Change> changes = new ArrayList<>();
        BigDecimal units = Objects.requireNonNull(cost.needs().units());
        for (BigDecimal size : sizes(product)) {
            if (size.compareTo(units) != 0) {
                String what = "a run of " + Decimals.readable(size, 0) + " units";
                changes.add(new Change(TargetMove.Kind.RUN_SIZE, what, List.of(), size, null, null, null));
            }
        }
        if (swaps != null) {
            String formula = Names.key(cost.needs().formula().name());
            for (Swap swap : swaps.swaps()) {
                if (Names.key(swap.formula().name()).equals(formula)) {
                    String what = swap.trial().to().name() + " in place of "
                            + swap.trial().from().name();
                    changes.add(new Change(TargetMove.Kind.SWAP, what, swap.cautions(), null, swap, null, null));
                }
            }
            for (Blend blend : swaps.blends()) {
                if (Names.key(blend.formula().name()).equals(formula)) {
                    changes.add(
                            new Change(TargetMove.Kind.BLEND, words(blend), blend.cautions(), null, null, blend, null));
                }
            }
        }
        changes.addAll(offers(cost));
        return changes;
    }

    private static String words(Blend blend) {
        String in = blend.entering().isEmpty() ? "other levels" : String.join(", ", blend.entering()) + " in";
        String out = blend.leaving().isEmpty() ? "" : ", " + String.join(", ", blend.leaving()) + " out";
        return "blend of " + blend.function() + ": " + in + out;
    }

    /** The sizes that were named or from which a unit costs less, rising. */
    private Set<BigDecimal> sizes(Product product) {
        Set<BigDecimal> all = new TreeSet<>();
        for (RunCost run : costed.runs()) {
            BigDecimal units = run.needs().units();
            if (units != null && Names.key(run.needs().name()).equals(Names.key(product.name()))) {
                all.add(units);
            }
        }
        SizeAdvice advice = sizes.get(Names.key(product.name()));
        if (advice != null) {
            for (SizeStep step : advice.steps()) {
                all.add(Objects.requireNonNull(step.at().needs().units()));
            }
        }
        return all;
    }

    /** Each offer of an item that the purchase does not take alone. */
    private List<Change> offers(RunCost cost) {
        List<Change> changes = new ArrayList<>();
        for (ItemCost item : cost.items()) {
            List<LineCost> lines = item.lines();
            for (Listing listing : lines.isEmpty()
                    ? List.<Listing>of()
                    : costed.market().currentListings(item.item().name())) {
                boolean taken = lines.size() == 1
                        && isSamePack(cost.purchase().listing(lines.get(0)).offer(), listing.offer());
                if (!taken) {
                    Offer offer = listing.offer();
                    String what = offer.item() + " in packs of " + offer.pack() + " from " + offer.supplier();
                    changes.add(new Change(TargetMove.Kind.OFFER, what, List.of(), null, null, null, offer));
                }
            }
        }
        return changes;
    }

    private static boolean isSamePack(Offer one, Offer other) {
        return Names.key(one.supplier()).equals(Names.key(other.supplier()))
                && one.packUnit() == other.packUnit()
                && one.packSize().value().compareTo(other.packSize().value()) == 0;
    }

    /**
     * Those that are combined: of each kind the ones with the greatest effect, and the smallest size that is enough.
     */
    private static List<Tried> pool(List<Tried> tried, BigDecimal allowed) {
        List<Tried> pool = new ArrayList<>();
        tried.stream()
                .filter(one -> one.change().units() != null
                        && Measure.ofOne(one.move().alone()).compareTo(allowed) <= 0)
                .min(Comparator.comparing(
                        one -> Objects.requireNonNull(one.change().units())))
                .ifPresent(pool::add);
        Map<TargetMove.Kind, Integer> taken = new EnumMap<>(TargetMove.Kind.class);
        for (Tried one : tried) {
            if (taken.merge(one.change().kind(), 1, Integer::sum) <= OF_EACH_KIND && !pool.contains(one)) {
                pool.add(one);
            }
        }
        return pool;
    }

    /** The best set so far. */
    private static final class Best {

        private final RunCost today;
        private final BigDecimal allowed;
        private List<Tried> set = List.of();
        private List<String> cautions = List.of();
        private RunCost after;

        Best(RunCost today, BigDecimal allowed) {
            this.today = today;
            this.after = today;
            this.allowed = allowed;
        }

        void offer(List<Tried> others, RunCost cost, List<String> moreCautions) {
            boolean reaches = Measure.ofOne(cost).compareTo(allowed) <= 0;
            boolean reached = Measure.ofOne(after).compareTo(allowed) <= 0;
            boolean better = reaches != reached
                    ? reaches
                    : reaches
                            ? cost.cash().compareTo(after.cash()) < 0
                            : Measure.ofOne(cost).compareTo(Measure.ofOne(after)) < 0;
            if (better) {
                set = List.copyOf(others);
                cautions = moreCautions;
                after = cost;
            }
        }

        /** The moves of the set; what is to be checked because several are together stands with the last of them. */
        List<TargetMove> moves() {
            List<TargetMove> moves = new ArrayList<>();
            for (int at = 0; at < set.size(); at++) {
                TargetMove move = set.get(at).move();
                moves.add(at < set.size() - 1 ? move : move.withCautions(cautions));
            }
            return moves;
        }
    }

    /**
     * Changes that may go together.
     *
     * @param cost what one costs if the effects simply add up: only a guess, for the order in which sets are planned
     * @param cash the same for the cash that the run takes
     */
    private record Guess(List<Tried> set, BigDecimal cost, BigDecimal cash) {}

    /**
     * Plans sets of two and three, each as a whole: first those that seem to reach the allowed cost, with the least
     * cash first; then the others, with the lowest cost first.
     */
    private TargetCost.Sets combine(List<Tried> pool, Best best) {
        List<Guess> guesses = new ArrayList<>();
        guess(pool, 0, new ArrayList<>(), best.today, guesses);
        Comparator<Guess> reaching = Comparator.comparing(guess -> guess.cost().compareTo(best.allowed) > 0);
        Comparator<Guess> promising = (one, other) -> one.cost().compareTo(best.allowed) <= 0
                ? one.cash().compareTo(other.cash())
                : one.cost().compareTo(other.cost());
        guesses.sort(reaching.thenComparing(promising)
                .thenComparing(guess -> guess.set().size()));
        int planned = 0;
        int possible = 0;
        for (Guess guess : guesses) {
            if (planned >= MOST_SETS) {
                possible++;
                continue;
            }
            List<Change> changes = guess.set().stream().map(Tried::change).toList();
            boolean judged = changes.stream().filter(Change::isOfRecipe).count() > 1;
            ChangesTogether recipe = judged ? together(changes) : null;
            if (judged && recipe == null) {
                continue; // they do not go together
            }
            planned++;
            possible++;
            RunCost cost = cost(best.today, changes, recipe == null ? List.of() : List.of(recipe.formula()));
            if (cost != null) {
                best.offer(guess.set(), cost, recipe == null ? List.of() : recipe.cautions());
            }
        }
        return new TargetCost.Sets(planned, possible);
    }

    private static void guess(List<Tried> pool, int from, List<Tried> set, RunCost today, List<Guess> guesses) {
        for (int at = from; at < pool.size(); at++) {
            Tried next = pool.get(at);
            if (set.stream().allMatch(one -> one.change().goesWith(next.change()))) {
                set.add(next);
                if (set.size() > 1) {
                    guesses.add(guessOf(List.copyOf(set), today));
                }
                if (set.size() < MOST) {
                    guess(pool, at + 1, set, today, guesses);
                }
                set.remove(set.size() - 1);
            }
        }
    }

    private static Guess guessOf(List<Tried> set, RunCost today) {
        BigDecimal cost = Measure.ofOne(today);
        BigDecimal cash = today.cash();
        for (Tried one : set) {
            cost = cost.add(one.move().effect());
            cash = cash.add(one.move().alone().cash()).subtract(today.cash());
        }
        return new Guess(set, cost, cash);
    }

    /** The recipe with all changes of it; null if they do not go together. */
    private static @Nullable ChangesTogether together(List<Change> changes) {
        List<Swap> swaps = new ArrayList<>();
        Blend blend = null;
        for (Change change : changes) {
            if (change.swap() != null) {
                swaps.add(change.swap());
            }
            blend = change.blend() == null ? blend : change.blend();
        }
        return ChangesTogether.of(swaps, blend);
    }

    /**
     * The cost of a run with changes; null if it cannot be made or bought.
     *
     * @param recipes the formula with several changes of it; none for that of a single change, or for the same formula
     */
    private @Nullable RunCost cost(RunCost today, List<Change> changes, List<Formula> recipes) {
        Book book = costed.book();
        Run run = today.needs().run();
        boolean otherOffers = false;
        for (Change change : changes) {
            BigDecimal units = change.units();
            Offer only = change.offer();
            if (recipes.isEmpty() && change.swap() != null) {
                book = book.withFormula(change.swap().trial().after().formula());
            }
            if (recipes.isEmpty() && change.blend() != null) {
                book = book.withFormula(change.blend().after().formula());
            }
            if (units != null) {
                run = Edits.sized(run, units);
            }
            if (only != null) {
                book = withOnly(book, only);
                otherOffers = true;
            }
        }
        for (Formula recipe : recipes) {
            book = book.withFormula(recipe);
        }
        RunNeeds needs = RunNeeds.of(book, run);
        Market market = otherOffers ? new Market(ofItems(book, needs)) : costed.market();
        return new RunCoster(market, planner, limits).cost(needs).cost();
    }

    private static Book withOnly(Book book, Offer only) {
        String item = Names.key(only.item());
        return book.withOffers(book.offers().stream()
                .filter(offer -> !Names.key(offer.item()).equals(item) || isSamePack(offer, only))
                .toList());
    }

    /** The offers of a run's items alone, so that another market is made quickly. */
    private static Book ofItems(Book book, RunNeeds needs) {
        Set<String> wanted = new HashSet<>();
        needs.items().forEach(item -> wanted.add(item.key()));
        return book.withOffers(book.offers().stream()
                .filter(offer -> wanted.contains(Names.key(offer.item())))
                .toList());
    }
}
