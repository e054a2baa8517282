package perkilo.purchasing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The stock of one item over the periods, with its purchases: what expires first is used first, and of lots that expire
 * together those in stock or on order before those that the plan buys.
 *
 * @param uncovered per period the need that the shelf could not cover, in the base unit
 * @param closing per period the stock at its end, expired goods included, in the base unit
 * @param expired per period the stock that expires unused in it, in the base unit
 * @param left what is left after the last period, by its last usable period; without expired goods
 * @param usable per period what can still be used at its end, in the base unit; in its last period, a lot still can
 * @param keptEarly quantities times the time that they are there before their first period, in the base unit and the
 *     unit of time of the holding cost
 */
public record Shelf(
        List<BigDecimal> uncovered,
        List<BigDecimal> closing,
        List<BigDecimal> expired,
        List<Left> left,
        List<BigDecimal> usable,
        BigDecimal keptEarly) {

    public Shelf {
        uncovered = List.copyOf(uncovered);
        closing = List.copyOf(closing);
        expired = List.copyOf(expired);
        left = List.copyOf(left);
        usable = List.copyOf(usable);
    }

    /** The shelf when nothing is bought. */
    public static Shelf of(Need need) {
        return withPurchases(need, List.of());
    }

    /**
     * The shelf when {@code bought} arrives at the start of each period.
     *
     * @param bought per period, in the base unit; as many as periods
     */
    public static Shelf of(Need need, List<BigDecimal> bought) {
        List<Bought> purchases = new ArrayList<>();
        for (int period = 0; period < bought.size(); period++) {
            int last = Need.lastPeriod(period, need.usablePeriods());
            purchases.add(new Bought(bought.get(period), period, last, 0));
        }
        return withPurchases(need, purchases);
    }

    /** The shelf with some purchases. */
    public static Shelf withPurchases(Need need, List<Bought> purchases) {
        return new Run(need).through(purchases);
    }

    /** What can still be used at the end of a period, in the base unit. */
    public BigDecimal usable(int period) {
        return usable.get(period);
    }

    /**
     * A purchase.
     *
     * @param quantity in the base unit
     * @param period that it is bought for
     * @param lastPeriod the last period that it can be used in
     * @param early how long before the period it arrives
     */
    public record Bought(BigDecimal quantity, int period, int lastPeriod, int early) {

        BigDecimal keptEarly() {
            return quantity.multiply(BigDecimal.valueOf(early));
        }
    }

    /** What is left of purchases and can be used after the last period, in the base unit. */
    public BigDecimal leftFromPurchases() {
        return left.stream().filter(Left::bought).map(Left::quantity).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /**
     * A quantity left on the shelf.
     *
     * @param quantity in the base unit, above zero
     * @param lastPeriod the last period, from zero, that it can be used in; {@link Need#UNLIMITED} if no shelf life is
     *     known
     * @param bought whether the plan buys it; otherwise it was in stock or on order at the start
     */
    public record Left(BigDecimal quantity, int lastPeriod, boolean bought) {}

    private static final class Run {
        /** What expires first; then stock and goods on order before purchases; then by arrival. */
        private static final Comparator<Left> ORDER_OF_USE =
                Comparator.comparingInt(Left::lastPeriod).thenComparing(Left::bought);

        private final Need need;
        private final List<Left> lots = new ArrayList<>();
        private BigDecimal onShelf = BigDecimal.ZERO;

        Run(Need need) {
            this.need = need;
        }

        Shelf through(List<Bought> purchases) {
            BigDecimal early = BigDecimal.ZERO;
            List<BigDecimal> uncovered = new ArrayList<>();
            List<BigDecimal> closing = new ArrayList<>();
            List<BigDecimal> usable = new ArrayList<>();
            List<BigDecimal> expired = new ArrayList<>();
            for (int period = 0; period < need.perPeriod().size(); period++) {
                BigDecimal tooLate = arrive(period);
                for (Bought one : purchases) {
                    if (one.period() == period) {
                        put(one.quantity(), one.lastPeriod(), true);
                        early = one.early() == 0 ? early : early.add(one.keptEarly());
                    }
                }
                uncovered.add(use(need.perPeriod().get(period), period));
                expired.add(tooLate.add(expiringIn(period)));
                closing.add(onShelf);
                usable.add(usableIn(period));
            }
            int after = need.perPeriod().size();
            for (Need.Lot lot : need.stock()) {
                boolean comes = lot.early() > 0 && lot.arrival() < after;
                early = comes ? early.add(lot.quantity().multiply(BigDecimal.valueOf(lot.early()))) : early;
            }
            return new Shelf(
                    uncovered,
                    closing,
                    expired,
                    lots.stream().filter(lot -> lot.lastPeriod() >= after).toList(),
                    usable,
                    early);
        }

        /** Adds what arrives in a period to the shelf, and returns how much of it has expired already. */
        private BigDecimal arrive(int period) {
            BigDecimal tooLate = BigDecimal.ZERO;
            for (Need.Lot lot : need.stock()) {
                if (lot.arrival() == period) {
                    put(lot.quantity(), lot.lastPeriod(), false);
                    tooLate = lot.lastPeriod() < period ? tooLate.add(lot.quantity()) : tooLate;
                }
            }
            return tooLate;
        }

        private void put(BigDecimal quantity, int lastPeriod, boolean bought) {
            if (quantity.signum() > 0) {
                onShelf = onShelf.add(quantity);
                lots.add(new Left(quantity, lastPeriod, bought));
                lots.sort(ORDER_OF_USE);
            }
        }

        /** Uses up to {@code wanted}, what expires first at the front, and returns what was missing. */
        private BigDecimal use(BigDecimal wanted, int period) {
            BigDecimal missing = wanted;
            for (int i = 0; i < lots.size() && missing.signum() > 0; i++) {
                Left lot = lots.get(i);
                if (lot.lastPeriod() < period) {
                    continue;
                }
                BigDecimal used = lot.quantity().min(missing);
                missing = missing.subtract(used);
                onShelf = onShelf.subtract(used);
                lots.set(i, new Left(lot.quantity().subtract(used), lot.lastPeriod(), lot.bought()));
            }
            lots.removeIf(lot -> lot.quantity().signum() == 0);
            return missing;
        }

        private BigDecimal usableIn(int period) {
            BigDecimal sum = BigDecimal.ZERO;
            for (Left lot : lots) {
                sum = lot.lastPeriod() >= period ? sum.add(lot.quantity()) : sum;
            }
            return sum;
        }

        private BigDecimal expiringIn(int period) {
            return lots.stream()
                    .filter(lot -> lot.lastPeriod() == period)
                    .map(Left::quantity)
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
        }
    }
}
