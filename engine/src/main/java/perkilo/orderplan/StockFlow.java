package perkilo.orderplan;

import static java.math.BigDecimal.ZERO;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * The stock of one item, day by day. Quantities are in kilograms or pieces.
 *
 * @param item the item
 * @param lots what is on the shelf, on order, and bought, in the order of use: by the last day on which they can be
 *     used, stock before goods on order before purchases, then by arrival
 * @param days as many as the horizon has
 */
public record StockFlow(HorizonItem item, List<LotUse> lots, List<Day> days) {

    private static final Comparator<LotUse> ORDER_OF_USE = Comparator.comparing(
                    LotUse::lastDay, Comparator.nullsLast(Comparator.<LocalDate>naturalOrder()))
            .thenComparing(LotUse::isBought)
            .thenComparing(LotUse::isOnOrder)
            .thenComparing(LotUse::from);

    public StockFlow {
        lots = List.copyOf(lots);
        days = List.copyOf(days);
    }

    /**
     * One day of the horizon.
     *
     * @param opening stock at its start that can be used or has just expired
     * @param delivered goods on order that arrive for it, since the day before
     * @param bought purchases that arrive for it, since the day before
     * @param used on it
     * @param expired what expires unused, from it on and before the next
     * @param closing {@code opening + delivered + bought − used − expired}: stock that can be used on later days
     * @param onShelf stock at its end with expired goods: the basis of the holding cost
     */
    public record Day(
            BigDecimal opening,
            BigDecimal delivered,
            BigDecimal bought,
            BigDecimal used,
            BigDecimal expired,
            BigDecimal closing,
            BigDecimal onShelf) {}

    /** Uses the lots of an item day by day: of all usable lots, the one that expires first. */
    static StockFlow of(HorizonProblem basis, HorizonItem item, List<LotUse.Bought> purchases) {
        List<LotUse> lots = new ArrayList<>();
        item.stock().forEach(stock -> lots.add(unused(basis.horizon(), stock)));
        purchases.forEach(bought -> lots.add(unused(basis, item, bought)));
        lots.sort(ORDER_OF_USE);
        List<LotUse> used = useUp(basis.horizon(), item, lots);
        return new StockFlow(item, used, days(basis.horizon(), used));
    }

    /** The stock at the end of the horizon that can be used later. */
    public List<LotUse> leftovers(Horizon horizon) {
        return lots.stream().filter(lot -> lot.isLeftAfter(horizon)).toList();
    }

    /** The lots that were on order at the start, by arrival. */
    public List<LotUse> onOrder() {
        return lots.stream()
                .filter(LotUse::isOnOrder)
                .sorted(Comparator.comparing(LotUse::from))
                .toList();
    }

    private static LotUse unused(Horizon horizon, StockOnHand stock) {
        int arrival = horizon.periodFrom(stock.from());
        int last = horizon.lastUse(stock.lastDay());
        return new LotUse(
                new LotUse.Held(stock), stock.quantity(), stock.from(), arrival, last, stock.lastDay(), List.of());
    }

    private static LotUse unused(HorizonProblem basis, HorizonItem item, LotUse.Bought bought) {
        LocalDate from = basis.arrival(bought.line().line());
        LocalDate lastDay = item.lastDay(from);
        int last = basis.horizon().lastUse(lastDay);
        int arrival = bought.line().line().period();
        return new LotUse(bought, bought.line().quantity(), from, arrival, last, lastDay, List.of());
    }

    private static List<LotUse> useUp(Horizon horizon, HorizonItem item, List<LotUse> lots) {
        List<List<BigDecimal>> used = new ArrayList<>();
        List<BigDecimal> left = new ArrayList<>();
        for (LotUse lot : lots) {
            used.add(new ArrayList<>());
            left.add(lot.quantity());
        }
        for (int period = 0; period < horizon.periods(); period++) {
            BigDecimal wanted = item.needed().get(period);
            for (int index = 0; index < lots.size(); index++) {
                BigDecimal taken = lots.get(index).isUsableIn(period) ? wanted.min(left.get(index)) : ZERO;
                wanted = wanted.subtract(taken);
                left.set(index, left.get(index).subtract(taken));
                used.get(index).add(taken);
            }
        }
        return IntStream.range(0, lots.size())
                .mapToObj(index -> withUse(lots.get(index), used.get(index)))
                .toList();
    }

    private static LotUse withUse(LotUse lot, List<BigDecimal> used) {
        return new LotUse(
                lot.source(), lot.quantity(), lot.from(), lot.arrival(), lot.lastPeriod(), lot.lastDay(), used);
    }

    private static List<Day> days(Horizon horizon, List<LotUse> lots) {
        List<Day> days = new ArrayList<>();
        BigDecimal opening =
                lots.stream().filter(LotUse::isOnShelf).map(LotUse::quantity).reduce(ZERO, BigDecimal::add);
        BigDecimal expiredSoFar = ZERO;
        for (int each = 0; each < horizon.periods(); each++) {
            int period = each;
            BigDecimal delivered = arriving(lots, period, LotUse::isOnOrder);
            BigDecimal bought = arriving(lots, period, LotUse::isBought);
            BigDecimal used =
                    sum(lots.stream().map(lot -> lot.used().get(period)).toList());
            BigDecimal expired = sum(lots.stream()
                    .filter(lot -> lot.givenUpIn() == period)
                    .map(LotUse::left)
                    .toList());
            BigDecimal closing =
                    opening.add(delivered).add(bought).subtract(used).subtract(expired);
            expiredSoFar = expiredSoFar.add(expired);
            days.add(new Day(opening, delivered, bought, used, expired, closing, closing.add(expiredSoFar)));
            opening = closing;
        }
        return days;
    }

    private static BigDecimal arriving(List<LotUse> lots, int period, Predicate<LotUse> which) {
        return sum(lots.stream()
                .filter(lot -> lot.arrival() == period && which.test(lot))
                .map(LotUse::quantity)
                .toList());
    }

    private static BigDecimal sum(List<BigDecimal> amounts) {
        return amounts.stream().reduce(ZERO, BigDecimal::add);
    }
}
