package perkilo.purchasing.search;

import static java.math.BigDecimal.ZERO;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import perkilo.purchasing.Need;

/**
 * The lots of an item that outlast a purchase, and how they lift its supply.
 *
 * <p>Purchases are gone through in the order in which they expire. Before the first that expires no sooner than a lot,
 * the lot joins the supply, because it is used before what is bought then. A lot that is still on order then covers
 * needs from its arrival on. If the supply does not reach so far yet, the lot waits, and joins as soon as the supply
 * reaches its arrival.
 */
final class ShelfLots {
    private final SupplyGrid grid;
    private final List<Need.Lot> lots;

    ShelfLots(SupplyGrid grid) {
        this.grid = grid;
        this.lots = grid.outlasting().lots();
    }

    List<BigDecimal> quantities() {
        return lots.stream().map(Need.Lot::quantity).toList();
    }

    /** The position after the lots that are used before purchases that last until a period have joined. */
    Shelved join(Shelved at, int last) {
        Lift lift = new Lift(at, last);
        lift.by(ZERO, grid.netNeed(), Need.UNLIMITED);
        return lift.moved();
    }

    /**
     * Covers the needs up to and with the period from lots, the first to expire first.
     *
     * @param last until when the purchases last that were gone through last
     */
    Shelved use(Shelved at, int period, int last) {
        BigDecimal needed = grid.covered(period);
        Lift lift = new Lift(at, last);
        for (int lot = 0; lot < lots.size() && lift.supply.compareTo(needed) < 0; lot++) {
            if (lots.get(lot).arrival() <= period && period <= lots.get(lot).lastPeriod()) {
                lift.set(lot, lift.by(lift.left.get(lot), needed, lots.get(lot).lastPeriod()));
            }
        }
        return lift.moved();
    }

    /** The position after steps of an offer are bought. */
    Shelved bought(Shelved at, PackChoice offer, long steps, double cost) {
        Lift lift = new Lift(at, offer.last);
        BigDecimal quantity =
                grid.unit.multiply(BigDecimal.valueOf(offer.units)).multiply(BigDecimal.valueOf(steps));
        lift.by(quantity, grid.cap(offer.cap), offer.last);
        return at.bought(lift.supply, lift.left, cost, offer, steps);
    }

    /** The supply from which on a lot covers needs. */
    private BigDecimal start(int lot) {
        int arrival = lots.get(lot).arrival();
        return arrival == 0 ? ZERO : grid.covered(arrival - 1);
    }

    /** The supply up to which a lot covers needs. */
    private BigDecimal end(int lot) {
        return grid.covered(Math.min(grid.periods - 1, lots.get(lot).lastPeriod()));
    }

    /** A position on its way. */
    private final class Lift {
        private final Shelved from;
        /** Until when the purchases last that are gone through. */
        private final int newest;

        private BigDecimal supply;
        private List<BigDecimal> left;

        Lift(Shelved from, int newest) {
            this.from = from;
            this.newest = newest;
            this.supply = from.supply();
            this.left = from.left();
        }

        Shelved moved() {
            return supply.compareTo(from.supply()) == 0 && left.equals(from.left()) ? from : from.moved(supply, left);
        }

        /**
         * Lifts the supply by a quantity. Lots that wait and expire no later are used before it, from where they start.
         *
         * @param most the supply is lifted no further
         * @param last the period in which the quantity expires
         * @return the unused rest
         */
        BigDecimal by(BigDecimal quantity, BigDecimal most, int last) {
            BigDecimal rest = quantity;
            for (int lot = awaited(last); lot >= 0; lot = awaited(last)) {
                BigDecimal until = startFromHere(lot).subtract(supply);
                if (start(lot).compareTo(most) > 0 || until.compareTo(rest) > 0) {
                    break;
                }
                rest = rest.subtract(until);
                supply = supply.add(until);
                join(lot);
            }
            BigDecimal step = most.subtract(supply).max(ZERO).min(rest);
            supply = supply.add(step);
            return rest.subtract(step);
        }

        /** Lifts the supply by a lot; goods that are not needed before the lot expires are lost. */
        private void join(int lot) {
            BigDecimal all = left.get(lot);
            set(lot, ZERO);
            by(all, end(lot), lots.get(lot).lastPeriod());
        }

        void set(int lot, BigDecimal rest) {
            List<BigDecimal> changed = new ArrayList<>(left);
            changed.set(lot, rest);
            left = List.copyOf(changed);
        }

        /**
         * The first lot that the supply has met or will meet, of those that expire by a period; of several, the one
         * that expires first. Below zero if there is none.
         */
        private int awaited(int last) {
            int first = -1;
            for (int lot = 0; lot < lots.size(); lot++) {
                boolean waits = left.get(lot).signum() > 0
                        && lots.get(lot).lastPeriod() <= last
                        && lots.get(lot).lastPeriod() <= newest;
                if (waits && (first < 0 || startFromHere(lot).compareTo(startFromHere(first)) < 0)) {
                    first = lot;
                }
            }
            return first;
        }

        /** The supply from which on a lot covers needs that are not covered yet. */
        private BigDecimal startFromHere(int lot) {
            return start(lot).max(supply);
        }
    }
}
