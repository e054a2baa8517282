package perkilo.purchasing.search.quick;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleSupplier;
import java.util.function.ToIntFunction;

/**
 * Finds the cheapest purchase from a set of vendors where the duty on their charges depends on the lines.
 *
 * <p>An order with charges K pays K · E / G beyond the lowest rate: G is the value of all its goods, E the duty on them
 * beyond that rate. The options of each item that are still open bring at most so many goods in all, so a line pays at
 * least its part of E at K / most goods, whatever else is bought. At these prices items choose on their own, and the
 * sum is a bound. Where minimum order values have to be met, goods have a value besides ({@link GoodsPrices}), and if
 * that is not enough, {@link GoodsFront} finds the cheapest options at these prices. Options that lift the bound above
 * the best purchase are left out; then less goods are possible, and the bound rises. What stays open is split, by the
 * item that changes most.
 */
final class DutySearch {

    /** The most parts that are looked at. */
    private static final int MOST = 2000;

    /** For how many parts one counts in which minimums have to be met. */
    private static final int PARTS_OF_FRONT = 10;

    /** Parts that promise to save less than this, in home currency, are left out; well below half a minor unit. */
    static final double TOLERANCE = 0.002;

    private final List<Order> orders;
    private final double[] minimum;
    private final double fixed;
    private final ToIntFunction<List<Option>> consider;
    private final DoubleSupplier bestCost;
    private double leftOut = Double.POSITIVE_INFINITY;
    private int looked;
    private int tooSmall = -1;

    /**
     * An order with duty on its charges that depends on the lines.
     *
     * @param perRate what its charges pay for each unit of the average rate, in home currency
     * @param lowest rate
     * @param goods which of the options' measures is the goods
     * @param duty which is the duty on them, below zero
     */
    record Order(double perRate, double lowest, int goods, int duty) {

        /** The duty on an option's goods beyond the lowest rate. */
        double excess(Option option) {
            return Math.max(0, -option.goods(duty) - lowest * option.goods(goods));
        }
    }

    /**
     * A search.
     *
     * @param orders at least one
     * @param minimum the order values to be met; the options' first measures count towards them
     * @param fixed cost besides the options
     * @param consider takes a purchase, one option per item, and keeps it if it is the best with all charges and duty;
     *     returns a vendor whose order is too small and who is not dealt with yet, −1 if there is none
     * @param bestCost the cost of the best purchase so far
     */
    DutySearch(
            List<Order> orders,
            double[] minimum,
            double fixed,
            ToIntFunction<List<Option>> consider,
            DoubleSupplier bestCost) {
        this.orders = orders;
        this.minimum = minimum;
        this.fixed = fixed;
        this.consider = consider;
        this.bestCost = bestCost;
    }

    /**
     * An option of an item.
     *
     * @param net cost, less what its goods are worth for minimum order values
     */
    private record Choice(Option option, double net) {}

    /**
     * Looks through all choices of options.
     *
     * @param items options of each item, complete
     * @return no choice costs less than this and than the best, unless {@link #tooSmall}
     */
    double search(List<CoverOptions.Found> items) {
        GoodsPrices prices = new GoodsPrices(items, minimum, bestCost.getAsDouble() - fixed);
        List<List<Choice>> open = new ArrayList<>(items.size());
        for (CoverOptions.Found item : items) {
            open.add(item.options().stream()
                    .map(option -> new Choice(option, prices.net(option)))
                    .toList());
        }
        look(open, prices.missing(new double[minimum.length]), Double.NEGATIVE_INFINITY);
        return leftOut;
    }

    /**
     * A vendor whose order was too small in a purchase that may else have been the cheapest; the search ended there. −1
     * if it came to its end.
     */
    int tooSmall() {
        return tooSmall;
    }

    private double target() {
        return bestCost.getAsDouble() - TOLERANCE;
    }

    /**
     * Looks at a part of all choices.
     *
     * @param missing what the minimums are worth
     * @param atLeast a bound of a larger part
     */
    private void look(List<List<Choice>> open, double missing, double atLeast) {
        looked += minimum.length == 0 ? 1 : PARTS_OF_FRONT;
        if (looked > MOST) {
            leftOut = Math.min(leftOut, atLeast);
        }
        if (looked > MOST || tooSmall >= 0) {
            return;
        }
        List<List<Choice>> items = open;
        Bound bound = new Bound(items, missing);
        for (boolean narrower = true; narrower && bound.total < target(); ) {
            List<List<Choice>> fewer = bound.below(target());
            narrower = count(fewer) < count(items);
            items = fewer;
            bound = narrower ? new Bound(items, missing) : bound;
        }
        if (bound.total < target() && minimum.length > 0) {
            bound.meetMinimums();
        }
        int found = bound.total < target() ? consider.applyAsInt(bound.options()) : -1;
        if (bound.total >= target()) {
            leftOut = Math.min(leftOut, bound.total);
        } else if (found >= 0) {
            tooSmall = found;
        } else {
            split(items, bound, missing);
        }
    }

    private static int count(List<List<Choice>> items) {
        return items.stream().mapToInt(List::size).sum();
    }

    /** Splits the options of one item; nothing is left to split where every item has one. */
    private void split(List<List<Choice>> items, Bound bound, double missing) {
        Order order = bound.leastCertain();
        int item = -1;
        double most = -1;
        for (int i = 0; i < items.size(); i++) {
            double change = items.get(i).size() == 1 ? -1 : change(items.get(i), order);
            if (change > most) {
                item = i;
                most = change;
            }
        }
        if (item < 0) {
            return;
        }
        List<Choice> sorted = new ArrayList<>(items.get(item));
        sorted.sort(Comparator.<Choice>comparingDouble(choice -> choice.option.goods(order.goods))
                .thenComparingDouble(choice -> order.excess(choice.option)));
        int half = sorted.size() / 2;
        for (List<Choice> part : List.of(sorted.subList(half, sorted.size()), sorted.subList(0, half))) {
            List<List<Choice>> parts = new ArrayList<>(items);
            parts.set(item, part);
            look(parts, missing, bound.total);
        }
    }

    /** How much of an order the choice among options changes. */
    private static double change(List<Choice> options, Order order) {
        double fewest = Double.POSITIVE_INFINITY;
        double most = 0;
        for (Choice choice : options) {
            fewest = Math.min(fewest, choice.option.goods(order.goods));
            most = Math.max(most, choice.option.goods(order.goods));
        }
        return most - fewest;
    }

    /** The least cost of any choice among options, where each line pays its least part of the duty. */
    private final class Bound {
        private final List<List<Choice>> items;
        private final double[] mostGoods = new double[orders.size()];
        private final Choice[] cheapest;
        private final double[] least;
        private double total;

        /** A bound with each item on its own. */
        Bound(List<List<Choice>> items, double missing) {
            this.items = items;
            for (int j = 0; j < orders.size(); j++) {
                for (List<Choice> options : items) {
                    double most = 0;
                    for (Choice choice : options) {
                        most = Math.max(most, choice.option.goods(orders.get(j).goods));
                    }
                    mostGoods[j] += most;
                }
            }
            cheapest = new Choice[items.size()];
            least = new double[items.size()];
            double sum = fixed + missing;
            for (int i = 0; i < cheapest.length; i++) {
                least[i] = Double.POSITIVE_INFINITY;
                for (Choice choice : items.get(i)) {
                    double cost = choice.net + duty(choice.option);
                    if (cost < least[i]) {
                        least[i] = cost;
                        cheapest[i] = choice;
                    }
                }
                sum += least[i];
            }
            total = sum;
        }

        /** The least part of the duty that an option pays. */
        private double duty(Option option) {
            double duty = 0;
            for (int j = 0; j < orders.size(); j++) {
                if (mostGoods[j] > 0) {
                    duty += orders.get(j).perRate * orders.get(j).excess(option) / mostGoods[j];
                }
            }
            return duty;
        }

        /** Lifts the bound to the least cost of options that together meet the minimums. */
        void meetMinimums() {
            List<CoverOptions.Found> priced = new ArrayList<>(items.size());
            for (List<Choice> options : items) {
                priced.add(new CoverOptions.Found(
                        options.stream()
                                .map(choice -> choice.option.at(choice.option.cost() + duty(choice.option)))
                                .sorted(Comparator.comparingDouble(Option::cost))
                                .toList(),
                        true));
            }
            double limit = target() - fixed;
            GoodsFront front = new GoodsFront(priced, minimum, limit);
            List<Option> chosen = front.choose();
            double cost = limit;
            if (chosen != null) {
                cost = 0;
                for (int i = 0; i < cheapest.length; i++) {
                    cheapest[i] = choiceOf(items.get(i), chosen.get(i));
                    cost += chosen.get(i).cost();
                }
            }
            total = Math.max(total, fixed + Math.min(cost, front.bound()));
        }

        /** The choice with the picks of an option. */
        private Choice choiceOf(List<Choice> choices, Option option) {
            return choices.stream()
                    .filter(choice -> choice.option.picks().equals(option.picks()))
                    .findFirst()
                    .orElseThrow();
        }

        /** The options that do not lift the bound to a limit. */
        List<List<Choice>> below(double limit) {
            List<List<Choice>> fewer = new ArrayList<>(items.size());
            for (int i = 0; i < least.length; i++) {
                List<Choice> kept = new ArrayList<>();
                for (Choice choice : items.get(i)) {
                    double with = total - least[i] + choice.net + duty(choice.option);
                    if (with < limit) {
                        kept.add(choice);
                    } else {
                        leftOut = Math.min(leftOut, with);
                    }
                }
                fewer.add(kept);
            }
            return fewer;
        }

        List<Option> options() {
            List<Option> options = new ArrayList<>(cheapest.length);
            for (Choice choice : cheapest) {
                options.add(choice.option);
            }
            return options;
        }

        /** The order whose duty the bound counts least of. */
        Order leastCertain() {
            Order order = orders.get(0);
            double most = -1;
            for (int j = 0; j < orders.size(); j++) {
                double goods = 0;
                double excess = 0;
                for (Choice choice : cheapest) {
                    goods += choice.option.goods(orders.get(j).goods);
                    excess += orders.get(j).excess(choice.option);
                }
                double missing = goods == 0 ? 0 : orders.get(j).perRate * excess * (1 / goods - 1 / mostGoods[j]);
                if (missing > most) {
                    most = missing;
                    order = orders.get(j);
                }
            }
            return order;
        }
    }
}
