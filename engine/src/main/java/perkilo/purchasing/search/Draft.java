package perkilo.purchasing.search;

import static java.math.BigDecimal.ONE;
import static java.math.BigDecimal.ZERO;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import perkilo.purchasing.Need;
import perkilo.purchasing.OrderCost;
import perkilo.purchasing.Payments;
import perkilo.purchasing.PlanCost;
import perkilo.purchasing.Preference;
import perkilo.purchasing.PurchasePlan;
import perkilo.purchasing.PurchasePlan.Line;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.Quote;
import perkilo.purchasing.Shelf;

/**
 * A plan with its exact cost, order by order and item by item. So a change is costed and checked by looking only at the
 * orders and items that it touches.
 */
final class Draft {
    private final PurchaseProblem problem;
    private final Orders index;
    /** By order: its cost; orders without lines are missing. */
    private final SortedMap<Integer, OrderCost> orders;
    /** By item. */
    private final List<List<Line>> lines;
    /** By item. */
    private final List<Shelf> shelves;
    /** By period. */
    private final BigDecimal[] outlay;
    /** By limit on cash. */
    private final BigDecimal[] paid;

    private int lineCount;
    private int unheld;
    private BigDecimal bought = ZERO;
    private BigDecimal objective = ZERO;
    private boolean possible = true;

    private Draft(SearchMarket market) {
        problem = market.problem;
        index = market.orders;
        orders = new TreeMap<>();
        lines = new ArrayList<>();
        shelves = new ArrayList<>();
        for (Need need : problem.needs()) {
            lines.add(List.of());
            shelves.add(Shelf.of(need));
            objective = objective.add(need.stockCost(shelves.get(shelves.size() - 1)));
        }
        outlay = new BigDecimal[market.periods];
        Arrays.fill(outlay, ZERO);
        paid = new BigDecimal[problem.cashLimits()];
        Arrays.fill(paid, ZERO);
    }

    private Draft(Draft other) {
        problem = other.problem;
        index = other.index;
        orders = new TreeMap<>(other.orders);
        lines = new ArrayList<>(other.lines);
        shelves = new ArrayList<>(other.shelves);
        outlay = other.outlay.clone();
        paid = other.paid.clone();
        lineCount = other.lineCount;
        unheld = other.unheld;
        bought = other.bought;
        objective = other.objective;
    }

    /** A plan without changes. */
    static Draft of(SearchMarket market, PurchasePlan plan) {
        Draft draft = new Draft(market);
        Change all = new Change(List.of(), plan.lines());
        draft.make(all);
        return draft;
    }

    /** The plan with a change, if it keeps every rule, costs no more, and a buyer would prefer it; else empty. */
    Optional<Draft> with(Change change) {
        Draft changed = new Draft(this);
        return changed.make(change)
                        && changed.objective.compareTo(objective) <= 0
                        && changed.preference().isBetterThan(preference())
                ? Optional.of(changed)
                : Optional.empty();
    }

    private Preference preference() {
        return new Preference(orders.size(), lineCount, unheld, List.of(outlay), bought);
    }

    private boolean make(Change change) {
        possible = change.in().stream().allMatch(this::canBeOrdered);
        touched(change).map(line -> quote(line).item()).distinct().forEach(item -> {
            if (possible) {
                restock(item, change);
            }
        });
        if (possible) {
            reorder(change);
            possible &= keepsLimits();
        }
        return possible;
    }

    private boolean canBeOrdered(Line line) {
        Quote quote = quote(line);
        return quote.isFor(line.period()) && quote.quantity(line.packs()).compareTo(quote.smallestLine()) >= 0;
    }

    /** Updates the shelf of an item for a change. */
    private void restock(int item, Change change) {
        List<Line> changed = new ArrayList<>(lines.get(item));
        changed.removeAll(change.out());
        change.in().stream().filter(line -> quote(line).item() == item).forEach(changed::add);
        lines.set(item, List.copyOf(changed));
        Need need = problem.needs().get(item);
        Shelf shelf = Shelf.withPurchases(
                need,
                changed.stream().map(line -> quote(line).bought(need, line)).toList());
        possible &= shelf.uncovered().stream().allMatch(missing -> missing.signum() == 0)
                && need.firstBelowSafety(shelf) < 0;
        BigDecimal before = need.stockCost(shelves.set(item, shelf));
        objective = objective.subtract(before).add(need.stockCost(shelf));
    }

    /** Costs the orders that a change touches. */
    private void reorder(Change change) {
        List<Line> ordered = new ArrayList<>(change.in());
        for (int order : new TreeSet<>(touched(change).map(this::orderOf).toList())) {
            lines(order).stream().filter(line -> !change.out().contains(line)).forEach(ordered::add);
            OrderCost before = orders.remove(order);
            if (before != null) {
                pay(before, ONE.negate());
            }
        }
        for (OrderCost order : PlanCost.ordersOf(problem, new PurchasePlan(ordered))) {
            orders.put(index.of(order.vendor(), order.period()), order);
            pay(order, ONE);
            possible &= !order.isRefused();
        }
        change.out().forEach(line -> count(line, -1));
        change.in().forEach(line -> count(line, 1));
    }

    private void pay(OrderCost order, BigDecimal times) {
        BigDecimal amount = order.landed().multiply(times);
        outlay[order.period()] = outlay[order.period()].add(amount);
        objective = objective.add(amount).add(problem.orderCost().multiply(times));
        if (problem.cashPerPeriod() != null) {
            for (Payments.Part part : problem.paymentsFor(order.vendor(), order.period())) {
                paid[part.limit()] = paid[part.limit()].add(order.paid(part).multiply(times));
            }
        }
    }

    private void count(Line line, int times) {
        lineCount += times;
        unheld += isUnheld(line) ? times : 0;
        bought = bought.add(quantity(line).multiply(BigDecimal.valueOf(times)));
    }

    private boolean keepsLimits() {
        BigDecimal total = ZERO;
        for (BigDecimal ofPeriod : outlay) {
            total = total.add(ofPeriod);
        }
        for (BigDecimal counted : paid) {
            if (isOver(counted, problem.cashPerPeriod())) {
                return false;
            }
        }
        return !isOver(total, problem.cashTotal());
    }

    private static boolean isOver(BigDecimal amount, @Nullable BigDecimal limit) {
        return limit != null && amount.compareTo(limit) > 0;
    }

    /** Whether anything is ordered. */
    boolean isPlaced(int order) {
        return orders.containsKey(order);
    }

    /** The lines of an order. */
    List<Line> lines(int order) {
        OrderCost placed = orders.get(order);
        return placed == null
                ? List.of()
                : placed.lines().stream().map(line -> line.line()).toList();
    }

    /** The lines of an item. */
    List<Line> linesOf(int item) {
        return lines.get(item);
    }

    /** The line of a quote in a period; null if there is none. */
    @Nullable Line line(int quote, int period) {
        for (Line line : lines.get(problem.quotes().get(quote).item())) {
            if (line.quote() == quote && line.period() == period) {
                return line;
            }
        }
        return null;
    }

    /** How much of a line could arrive in another period, or not at all, because the shelf has enough until then. */
    BigDecimal spare(Line line, int period) {
        return shelves.get(quote(line).item()).closing().subList(line.period(), period).stream()
                .reduce(quantity(line), BigDecimal::min);
    }

    /** Whether a line is ordered after its price has expired. */
    boolean isUnheld(Line line) {
        return line.period() > quote(line).heldUntil();
    }

    private int orderOf(Line line) {
        return index.of(quote(line).vendor(), line.period());
    }

    Quote quote(Line line) {
        return problem.quotes().get(line.quote());
    }

    PurchasePlan plan() {
        return new PurchasePlan(lines.stream().flatMap(List::stream).toList());
    }

    private BigDecimal quantity(Line line) {
        return quote(line).quantity(line.packs());
    }

    private static Stream<Line> touched(Change change) {
        return Stream.concat(change.out().stream(), change.in().stream());
    }
}
