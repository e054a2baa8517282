package perkilo.orderplan;

import static java.math.BigDecimal.ZERO;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import perkilo.purchasing.Need;

/**
 * The stock of one item, month by month. Quantities are in kilograms or pieces.
 *
 * @param item the item
 * @param lots what is on the shelf, on order, and bought, in the order of use: by the last month in which they can be
 *     used, purchases after the rest, then by arrival
 * @param months as many as the horizon has
 */
public record StockFlow(HorizonItem item, List<LotUse> lots, List<Month> months) {

    public StockFlow {
        lots = List.copyOf(lots);
        months = List.copyOf(months);
    }

    /**
     * One month.
     *
     * @param opening stock at its start that can be used or has just expired
     * @param delivered goods on order that arrive for it
     * @param bought purchases that arrive for it
     * @param used in it
     * @param expired what expires unused in it
     * @param closing {@code opening + delivered + bought − used − expired}: stock that can be used later
     * @param onShelf stock at its end with expired goods: the basis of the holding cost
     */
    public record Month(
            BigDecimal opening,
            BigDecimal delivered,
            BigDecimal bought,
            BigDecimal used,
            BigDecimal expired,
            BigDecimal closing,
            BigDecimal onShelf) {}

    /** Uses the lots of an item month by month: of all usable lots, the one that expires first. */
    static StockFlow of(Horizon horizon, HorizonItem item, List<LotUse.Bought> purchases) {
        List<LotUse> lots = new ArrayList<>();
        item.stock().forEach(stock -> lots.add(unused(stock)));
        purchases.forEach(bought -> lots.add(unused(horizon, item, bought)));
        lots.sort(Comparator.comparingInt(LotUse::lastPeriod)
                .thenComparing(LotUse::isBought)
                .thenComparingInt(LotUse::arrival));
        List<LotUse> used = useUp(horizon, item, lots);
        return new StockFlow(item, used, months(horizon, used));
    }

    /** The stock at the end of the horizon that can be used later. */
    public List<LotUse> leftovers(Horizon horizon) {
        return lots.stream().filter(lot -> lot.isLeftAfter(horizon)).toList();
    }

    /** The lots that were on order at the start, by arrival. */
    public List<LotUse> onOrder() {
        return lots.stream()
                .filter(LotUse::isOnOrder)
                .sorted(Comparator.comparingInt(LotUse::arrival))
                .toList();
    }

    private static LotUse unused(StockOnHand stock) {
        int last = Need.lastPeriod(stock.arrival(), stock.usablePeriods());
        return new LotUse(new LotUse.Held(stock), stock.quantity(), stock.arrival(), last, stock.lastDay(), List.of());
    }

    private static LotUse unused(Horizon horizon, HorizonItem item, LotUse.Bought bought) {
        int arrival = bought.line().line().period();
        int last = Need.lastPeriod(arrival, item.usablePeriods());
        return new LotUse(bought, bought.line().quantity(), arrival, last, item.lastDay(horizon, arrival), List.of());
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
        return new LotUse(lot.source(), lot.quantity(), lot.arrival(), lot.lastPeriod(), lot.lastDay(), used);
    }

    private static List<Month> months(Horizon horizon, List<LotUse> lots) {
        List<Month> months = new ArrayList<>();
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
            months.add(new Month(opening, delivered, bought, used, expired, closing, closing.add(expiredSoFar)));
            opening = closing;
        }
        return months;
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
