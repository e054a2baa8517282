package perkilo.purchasing.search;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The dynamic program of one item with stock, or goods on order, that outlast purchases.
 *
 * <p>Besides the effective supply, a position holds the rest of each such lot. In a period that the supply does not
 * cover, lots cover what is missing, the first to expire first. Before the first purchases that expire after a lot, the
 * lot is used before them ({@link ShelfLots}).
 */
final class ShelfProgram implements ItemProgram {
    private final WantedItem item;
    private final SupplyGrid grid;
    private final ShelfLots lots;
    private Shelved end;

    ShelfProgram(WantedItem item) {
        this.item = item;
        grid = item.grid();
        lots = new ShelfLots(grid);
        end = start();
    }

    private Shelved start() {
        return new Shelved(BigDecimal.ZERO, lots.quantities(), 0, null, null, 0);
    }

    @Override
    public double solve(Terms terms) {
        List<Shelved> now = List.of(start());
        int last = -1;
        for (int t = 0; t < grid.periods; t++) {
            for (Link link : item.linksByPeriod().get(t)) {
                last = Math.max(last, link.last());
                now = buy(link, terms, joined(now, last));
            }
            now = use(t, last, now);
        }
        return end(now);
    }

    private List<Shelved> joined(List<Shelved> positions, int last) {
        return positions.stream().map(at -> lots.join(at, last)).toList();
    }

    private List<Shelved> buy(Link link, Terms terms, List<Shelved> before) {
        boolean forced = terms.forced(link);
        double charge = terms.charge[link.id()];
        if (charge == Double.POSITIVE_INFINITY) {
            return forced ? List.of() : before;
        }
        List<Shelved> first = before;
        List<Shelved> bought = List.of();
        for (PackChoice offer : link.offers()) {
            List<Shelved> lines = new ArrayList<>();
            for (Shelved at : first) {
                extend(at, offer, terms, lines);
            }
            for (Shelved at : bought) {
                extend(at, offer, terms, lines);
            }
            if (terms.atLeast[offer.id] > 0) {
                first = List.of();
            } else {
                lines.addAll(bought);
            }
            bought = worthKeeping(lines);
        }
        List<Shelved> after = new ArrayList<>(forced ? List.of() : before);
        bought.forEach(at -> after.add(at.charged(charge)));
        return worthKeeping(after);
    }

    private void extend(Shelved at, PackChoice offer, Terms terms, List<Shelved> to) {
        long least = Math.max(Math.max(1, offer.costs.fewestSteps), terms.atLeast[offer.id]);
        long most = Math.min(offer.mostSteps, terms.atMost[offer.id]);
        BigDecimal step = grid.unit.multiply(BigDecimal.valueOf(offer.units));
        BigDecimal toCap = grid.cap(offer.cap).subtract(at.supply()).max(BigDecimal.ZERO);
        long filling =
                Math.max(least, toCap.divide(step, 0, RoundingMode.CEILING).longValueExact());
        for (long n = least; n < filling && n <= most; n++) {
            to.add(lots.bought(at, offer, n, terms.cost(offer, n)));
        }
        if (filling <= most) {
            long n = terms.cheapestFrom(offer, filling, most);
            to.add(lots.bought(at, offer, n, terms.cost(offer, n)));
        }
    }

    /** Covers the needs up to and with the period, from lots if the supply is short. */
    private List<Shelved> use(int period, int last, List<Shelved> positions) {
        List<Shelved> covered = new ArrayList<>();
        BigDecimal needed = grid.covered(period);
        for (Shelved at : positions) {
            Shelved used = lots.use(at, period, last);
            if (used.supply().compareTo(needed) >= 0) {
                covered.add(used);
            }
        }
        return worthKeeping(covered);
    }

    /** Leaves out positions that another one beats in supply, in every lot, and in cost. */
    private static List<Shelved> worthKeeping(List<Shelved> positions) {
        List<Shelved> sorted = new ArrayList<>(positions);
        sorted.sort(Comparator.comparingDouble(Shelved::cost));
        List<Shelved> kept = new ArrayList<>();
        for (Shelved at : sorted) {
            if (kept.stream().noneMatch(better -> better.covers(at))) {
                kept.add(at);
            }
        }
        return kept;
    }

    private double end(List<Shelved> positions) {
        double best = Double.POSITIVE_INFINITY;
        for (Shelved at : positions) {
            double cost = at.cost() - grid.credit(at.supply());
            if (cost < best) {
                best = cost;
                end = at;
            }
        }
        return best;
    }

    @Override
    public Picks picks(Terms terms) {
        PickList picked = new PickList();
        for (Shelved at = end; at != null; at = at.before()) {
            PackChoice offer = at.offer();
            if (offer != null) {
                picked.add(offer, at.steps());
            }
        }
        return picked.reversed(grid.credit(end.supply()));
    }
}
