package perkilo.purchasing.search;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import perkilo.purchasing.PurchasePlan.Line;
import perkilo.purchasing.Quote;

/** Changes that buy the same quotes at other times: whole orders, lines or some packs; the latest period first. */
final class Rearrangements {
    private final Orders orders;

    Rearrangements(SearchMarket market) {
        orders = market.orders;
    }

    /** Changes that move an order to another period, where it joins what is ordered there. */
    Stream<Change> ofOrder(Draft draft, int order) {
        List<Line> lines = draft.lines(order);
        return latestFirst()
                .filter(period -> period != orders.period(order))
                .filter(period -> lines.stream().allMatch(line -> canWait(draft, line, period)))
                .filter(period -> isLater(lines, period)
                        || draft.isPlaced(orders.of(draft.quote(lines.get(0)).vendor(), period))
                        || lines.stream().anyMatch(draft::isUnheld))
                .mapToObj(period -> Change.moving(draft, lines, period));
    }

    /** Changes that move a line to another order of its vendor, move packs to a later line, or drop packs. */
    Stream<Change> ofItem(Draft draft, int item) {
        return draft.linesOf(item).stream()
                .flatMap(line -> Stream.of(toOtherOrders(draft, line), toLaterLines(draft, line), fewer(draft, line))
                        .flatMap(changes -> changes));
    }

    private Stream<Change> toOtherOrders(Draft draft, Line line) {
        List<Line> lines = List.of(line);
        return latestFirst()
                .filter(period -> period != line.period())
                .filter(period -> draft.isPlaced(orders.of(draft.quote(line).vendor(), period)))
                .filter(period -> canWait(draft, line, period))
                .filter(period ->
                        isLater(lines, period) || draft.line(line.quote(), period) != null || draft.isUnheld(line))
                .mapToObj(period -> Change.moving(draft, lines, period));
    }

    private static Stream<Change> toLaterLines(Draft draft, Line line) {
        return draft.linesOf(draft.quote(line).item()).stream()
                .filter(later -> later.quote() == line.quote() && later.period() > line.period())
                .flatMap(later ->
                        parts(draft, line, later.period()).mapToObj(packs -> Change.shifting(line, later, packs)));
    }

    private Stream<Change> fewer(Draft draft, Line line) {
        return parts(draft, line, orders.periods).mapToObj(packs -> Change.shortening(line, packs));
    }

    private static boolean isLater(List<Line> lines, int period) {
        return period > lines.get(0).period();
    }

    /** Whether the shelf has enough without a line until a period. */
    private static boolean canWait(Draft draft, Line line, int period) {
        return period <= line.period()
                || draft.spare(line, period).compareTo(draft.quote(line).quantity(line.packs())) >= 0;
    }

    /**
     * Numbers of packs that a line may lose until a period: as many as the shelf can spare, half of that, and so on.
     */
    private static LongStream parts(Draft draft, Line line, int period) {
        Quote quote = draft.quote(line);
        long multiple = quote.multiple();
        BigDecimal step = quote.quantity(multiple);
        long spare = draft.spare(line, period)
                .divide(step, 0, RoundingMode.DOWN)
                .min(BigDecimal.valueOf(line.packs() / multiple - 1))
                .longValueExact();
        return LongStream.iterate(spare, steps -> steps > 0, steps -> steps / 2).map(steps -> steps * multiple);
    }

    private IntStream latestFirst() {
        return IntStream.rangeClosed(1, orders.periods).map(back -> orders.periods - back);
    }
}
