package perkilo.purchasing.search;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import perkilo.purchasing.PurchasePlan.Line;

/** Changes that omit one order or line: its items are planned anew within the orders that are left. */
final class Omissions {
    /** A small cost per item and order, in home currency, so that no item is in an order needlessly. */
    private static final double TRIFLE = 1e-6;

    private final Planning planning;
    private final SearchMarket market;

    Omissions(Planning planning) {
        this.planning = planning;
        market = planning.market;
    }

    /** Changes that omit an order free of charge; the search itself has tried to omit the other orders. */
    Stream<Change> ofOrder(Draft draft, int order) {
        if (market.orders.opening[order] > 0) {
            return Stream.empty();
        }
        List<Integer> items = draft.lines(order).stream()
                .map(line -> draft.quote(line).item())
                .distinct()
                .toList();
        return planned(draft, items, terms -> {
            for (Link link : market.linksOf.get(order)) {
                terms.charge[link.id()] = Double.POSITIVE_INFINITY;
            }
        });
    }

    /** Changes that omit one of an item's lines in the same period. */
    Stream<Change> ofItem(Draft draft, int item) {
        List<Line> lines = draft.linesOf(item);
        return lines.stream()
                .filter(line -> lines.stream().anyMatch(other -> isBeside(other, line)))
                .flatMap(line -> planned(draft, List.of(item), terms -> terms.atMost[offer(line)] = 0));
    }

    private static boolean isBeside(Line other, Line line) {
        return other.period() == line.period() && other.quote() != line.quote();
    }

    private int offer(Line line) {
        return IntStream.range(0, market.offers.size())
                .filter(id ->
                        market.offers.get(id).quote == line.quote() && market.offers.get(id).period == line.period())
                .findFirst()
                .orElseThrow();
    }

    /** Plans some items anew in the orders of the plan, under one more condition. */
    private Stream<Change> planned(Draft draft, List<Integer> items, Consumer<Terms> condition) {
        Terms terms = new Terms(market);
        for (Link link : market.links) {
            terms.charge[link.id()] = draft.isPlaced(link.order()) ? TRIFLE : Double.POSITIVE_INFINITY;
        }
        condition.accept(terms);
        List<Line> before = new ArrayList<>();
        List<Line> after = new ArrayList<>();
        for (int item : items) {
            Picks picks = planning.within(item, terms);
            if (picks == null) {
                return Stream.empty();
            }
            before.addAll(draft.linesOf(item));
            IntStream.range(0, picks.lines()).forEach(line -> after.add(market.line(picks, line)));
        }
        return Stream.of(Change.between(before, after));
    }
}
