package perkilo.purchasing.search.quick;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Chooses one option for each item so that the vendors' minimum order values are met at the least total cost.
 *
 * <p>It goes item by item and keeps the partial choices that no other beats in both cost and goods. A partial choice is
 * given up if its least possible total, with missing goods at {@link GoodsPrices}, is not below that of a quick choice
 * ({@link QuickFill}) or not below the limit.
 */
final class GoodsFront {

    /** The most partial choices that are continued: those that may end the cheapest. */
    private static final int MOST_PARTIAL = 500;

    /** The most partial choices held at once; then they are reduced. */
    private static final int MOST_EXTENDED = 50_000;

    private final List<CoverOptions.Found> items;
    private final double[] minimum;
    private final double[] rest;
    private double limit;
    private boolean complete = true;
    private double given = Double.POSITIVE_INFINITY;

    /**
     * A choice to be made.
     *
     * @param items options of each item
     * @param minimum the values to be met, one per vendor
     * @param limit choices that cost as much are not useful
     */
    GoodsFront(List<CoverOptions.Found> items, double[] minimum, double limit) {
        this.items = items;
        this.minimum = minimum;
        this.limit = limit;
        this.rest = new double[items.size() + 1];
    }

    /**
     * Options of the first items.
     *
     * @param net the cost, with the value of the missing goods
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared and never shown; very many are made
    private record Partial(
            @Nullable Partial before, @Nullable Option option, double cost, double net, double[] goods) {}

    /** The bound: no choice costs less than this and than the chosen one, if {@link #isComplete}. */
    double bound() {
        return given;
    }

    /** Whether every option that could have been chosen was looked at. */
    boolean isComplete() {
        return complete;
    }

    /** The chosen options, one per item in their order; null if no choice below the limit meets the minimums. */
    @Nullable List<Option> choose() {
        for (CoverOptions.Found item : items) {
            complete &= item.complete();
        }
        if (Double.isFinite(limit) && new GoodsPrices(items, minimum, limit).bound() >= limit) {
            return null;
        }
        QuickFill fill = new QuickFill(items, minimum);
        boolean filled = fill.cost() < limit;
        limit = Math.min(limit, fill.cost());
        GoodsPrices prices = new GoodsPrices(items, minimum, limit);
        Partial best = prices.bound() >= limit ? null : cheapest(prices);
        if (best != null) {
            return chosen(best);
        }
        return filled ? fill.options() : null;
    }

    private @Nullable Partial cheapest(GoodsPrices prices) {
        List<List<Priced>> options =
                items.stream().map(item -> priced(item, prices)).toList();
        for (int at = options.size() - 1; at >= 0; at--) {
            double least =
                    options.get(at).stream().mapToDouble(Priced::net).min().orElseThrow();
            rest[at] = rest[at + 1] + least;
        }
        double[] nothing = new double[minimum.length];
        List<Partial> front = List.of(new Partial(null, null, 0, prices.missing(nothing), nothing));
        for (int at = 0; at < items.size(); at++) {
            List<Partial> next = extended(front, options.get(at), prices, at);
            front = options.get(at).size() == 1 ? next : best(next, at + 1);
        }
        Partial best = null;
        for (Partial partial : front) {
            if (reaches(partial.goods, minimum) && (best == null || partial.cost < best.cost)) {
                best = partial;
            }
        }
        return best;
    }

    /** An option, and its cost less the value of its goods. */
    private record Priced(Option option, double net) {}

    private static List<Priced> priced(CoverOptions.Found item, GoodsPrices prices) {
        return item.options().stream()
                .map(option -> new Priced(option, prices.net(option)))
                .toList();
    }

    /** Partial choices with one item more, option by option: the result is made of sorted runs and quick to sort. */
    private List<Partial> extended(List<Partial> front, List<Priced> options, GoodsPrices prices, int at) {
        List<Partial> next = new ArrayList<>();
        for (Priced priced : options) {
            for (Partial partial : front) {
                if (partial.net + priced.net + rest[at + 1] < limit) {
                    double cost = partial.cost + priced.option.cost();
                    double[] goods = together(partial.goods, priced.option);
                    double net = cost + prices.missing(goods);
                    if (net + rest[at + 1] < limit) {
                        next.add(new Partial(partial, priced.option, cost, net, goods));
                    }
                }
            }
            if (next.size() > MOST_EXTENDED) {
                next = best(next, at + 1);
            }
        }
        return next;
    }

    private double[] together(double[] one, Option other) {
        double[] sum = new double[one.length];
        for (int i = 0; i < sum.length; i++) {
            sum[i] = Math.min(minimum[i], one[i] + other.goods(i));
        }
        return sum;
    }

    /** The partial choices that no other beats, the cheapest first; if too many, those that may end the cheapest. */
    private List<Partial> best(List<Partial> all, int next) {
        if (minimum.length == 1) {
            return mostPromising(unbeaten(all), next);
        }
        return unbeaten(mostPromising(all, next)); // the other way round takes long with several vendors
    }

    private List<Partial> unbeaten(List<Partial> all) {
        all.sort(Comparator.comparingDouble(Partial::cost));
        List<Partial> kept = new ArrayList<>();
        for (Partial partial : all) {
            if (!isBeaten(partial, kept)) {
                kept.add(partial);
            }
        }
        return kept;
    }

    private List<Partial> mostPromising(List<Partial> all, int next) {
        if (all.size() <= MOST_PARTIAL) {
            return all;
        }
        double[] nets = all.stream().mapToDouble(Partial::net).sorted().toArray();
        double last = nets[MOST_PARTIAL - 1];
        given = Math.min(given, nets[MOST_PARTIAL] + rest[next]);
        long below = Arrays.stream(nets).filter(net -> net < last).count();
        long alike = MOST_PARTIAL - below;
        List<Partial> most = new ArrayList<>(MOST_PARTIAL);
        for (Partial partial : all) {
            if (partial.net < last || (partial.net == last && alike-- > 0)) {
                most.add(partial);
            }
        }
        return most;
    }

    /** Whether a kept choice costs no more and brings as much; with one vendor only the last one kept can. */
    private boolean isBeaten(Partial partial, List<Partial> kept) {
        int first = minimum.length == 1 ? Math.max(0, kept.size() - 1) : 0;
        for (int i = kept.size() - 1; i >= first; i--) {
            if (reaches(kept.get(i).goods, partial.goods)) {
                return true;
            }
        }
        return false;
    }

    private static List<Option> chosen(Partial last) {
        List<Option> options = new ArrayList<>();
        for (Partial at = last; at != null; at = at.before) {
            Option option = at.option;
            if (option != null) {
                options.add(0, option);
            }
        }
        return options;
    }

    private static boolean reaches(double[] goods, double[] other) {
        for (int i = 0; i < goods.length; i++) {
            if (goods[i] < other[i] - 1e-9) {
                return false;
            }
        }
        return true;
    }
}
