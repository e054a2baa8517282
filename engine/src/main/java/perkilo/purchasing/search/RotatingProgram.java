package perkilo.purchasing.search;

import static java.math.BigDecimal.ZERO;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import perkilo.purchasing.Need;

/**
 * The dynamic program of one item with safety stock whose purchases may expire: then it matters which goods make up the
 * safety stock, as they are used and replaced.
 *
 * <p>A position holds what is left of all goods by their last period of use. Such items are rare, and their purchases
 * few.
 */
final class RotatingProgram implements ItemProgram {
    private final WantedItem item;
    private final Need need;
    private final BigDecimal unit;
    /** The kinds of goods: those that expire first come first, and of these stock before purchases. */
    private final List<Kind> kinds;

    private @Nullable Position end;

    /** Goods with one last period of use. */
    private record Kind(int last, boolean bought) {}

    /** What is left by kind, and the cheapest way to it. */
    @SuppressWarnings("ArrayRecordComponent") // never compared and never shown; very many are made
    private record Position(
            BigDecimal[] left,
            double cost,
            @Nullable Position before,
            @Nullable PackChoice offer,
            long steps) {}

    RotatingProgram(WantedItem item, Need need) {
        this.item = item;
        this.need = need;
        unit = item.grid().unit;
        TreeSet<Kind> all = new TreeSet<>(Comparator.comparingInt(Kind::last).thenComparing(Kind::bought));
        need.stock().forEach(lot -> all.add(new Kind(lot.lastPeriod(), false)));
        item.linksByPeriod().forEach(links -> links.forEach(link -> all.add(new Kind(link.last(), true))));
        kinds = List.copyOf(all);
    }

    /** Whether an item needs this program. */
    static boolean suits(WantedItem item, Need need) {
        boolean expires = !item.grid().outlasting().lots().isEmpty()
                || item.linksByPeriod().stream()
                        .flatMap(List::stream)
                        .anyMatch(link -> link.last() < item.grid().periods - 1);
        return expires && !need.safety().isNone();
    }

    @Override
    public double solve(Terms terms) {
        BigDecimal[] nothing = new BigDecimal[kinds.size()];
        Arrays.fill(nothing, ZERO);
        List<Position> now = List.of(new Position(nothing, 0, null, null, 0));
        for (int t = 0; t < item.grid().periods; t++) {
            now = arrived(now, t);
            for (Link link : item.linksByPeriod().get(t)) {
                now = buy(link, terms, now);
            }
            now = used(now, t);
        }
        double best = Double.POSITIVE_INFINITY;
        end = null;
        for (Position at : now) {
            double total = at.cost() - credit(at);
            if (total < best) {
                best = total;
                end = at;
            }
        }
        return best;
    }

    private List<Position> arrived(List<Position> positions, int period) {
        List<Position> after = new ArrayList<>();
        for (Position at : positions) {
            BigDecimal[] left = at.left().clone();
            for (Need.Lot lot : need.stock()) {
                if (lot.arrival() == period && lot.lastPeriod() >= period) {
                    int kind = kinds.indexOf(new Kind(lot.lastPeriod(), false));
                    left[kind] = left[kind].add(lot.quantity());
                }
            }
            after.add(new Position(left, at.cost(), at, null, 0));
        }
        return after;
    }

    private List<Position> buy(Link link, Terms terms, List<Position> before) {
        boolean forced = terms.forced(link);
        double charge = terms.charge[link.id()];
        if (charge == Double.POSITIVE_INFINITY) {
            return forced ? List.of() : before;
        }
        List<Position> first = before;
        List<Position> bought = List.of();
        for (PackChoice offer : link.offers()) {
            List<Position> lines = new ArrayList<>();
            first.forEach(at -> extend(at, offer, terms, lines));
            bought.forEach(at -> extend(at, offer, terms, lines));
            if (terms.atLeast[offer.id] > 0) {
                first = List.of();
            } else {
                lines.addAll(bought);
            }
            bought = worthKeeping(lines);
        }
        List<Position> after = new ArrayList<>(forced ? List.of() : before);
        bought.forEach(at -> after.add(new Position(at.left(), at.cost() + charge, at, null, 0)));
        return worthKeeping(after);
    }

    private void extend(Position at, PackChoice offer, Terms terms, List<Position> to) {
        long least = Math.max(Math.max(1, offer.costs.fewestSteps), terms.atLeast[offer.id]);
        long most = Math.min(offer.mostSteps, terms.atMost[offer.id]);
        BigDecimal step = unit.multiply(BigDecimal.valueOf(offer.units));
        int kind = kinds.indexOf(new Kind(offer.last, true));
        for (long n = least; n <= most; n++) {
            BigDecimal[] left = at.left().clone();
            left[kind] = left[kind].add(step.multiply(BigDecimal.valueOf(n)));
            to.add(new Position(left, at.cost() + terms.cost(offer, n), at, offer, n));
        }
    }

    /** Covers the need of a period, and drops what expires; positions that lack something are left out. */
    private List<Position> used(List<Position> positions, int period) {
        List<Position> after = new ArrayList<>();
        for (Position at : positions) {
            BigDecimal[] left = at.left().clone();
            BigDecimal missing = need.perPeriod().get(period);
            BigDecimal usable = ZERO;
            for (int kind = 0; kind < left.length; kind++) {
                BigDecimal taken = left[kind].min(missing);
                left[kind] = left[kind].subtract(taken);
                missing = missing.subtract(taken);
                usable = usable.add(left[kind]);
                left[kind] = kinds.get(kind).last() <= period ? ZERO : left[kind];
            }
            if (missing.signum() == 0 && usable.compareTo(need.safety().at(period)) >= 0) {
                after.add(new Position(left, at.cost(), at, null, 0));
            }
        }
        return worthKeeping(after);
    }

    private double credit(Position at) {
        BigDecimal left = ZERO;
        for (int kind = 0; kind < kinds.size(); kind++) {
            left = kinds.get(kind).bought() ? left.add(at.left()[kind]) : left;
        }
        return left.min(need.creditable()).multiply(need.creditPerUnit()).doubleValue();
    }

    /** Leaves out positions that another one beats in cost and in goods. */
    private List<Position> worthKeeping(List<Position> positions) {
        List<Position> sorted = new ArrayList<>(positions);
        sorted.sort(Comparator.comparingDouble(Position::cost));
        List<Position> kept = new ArrayList<>();
        for (Position at : sorted) {
            if (kept.stream().noneMatch(better -> covers(better, at))) {
                kept.add(at);
            }
        }
        return kept;
    }

    /**
     * Whether one position has as much as another that lasts as long, whatever the time. Where leftovers have a value,
     * it has to have as much of each kind.
     */
    private boolean covers(Position one, Position other) {
        boolean ofEach = need.creditPerUnit().signum() > 0;
        BigDecimal more = ZERO;
        for (int kind = kinds.size() - 1; kind >= 0; kind--) {
            BigDecimal here = one.left()[kind].subtract(other.left()[kind]);
            more = ofEach ? here : more.add(here);
            if (more.signum() < 0) {
                return false;
            }
        }
        return true;
    }

    @Override
    public Picks picks(Terms terms) {
        PickList picked = new PickList();
        double credit = end == null ? 0 : credit(end);
        for (Position at = end; at != null; at = at.before()) {
            PackChoice offer = at.offer();
            if (offer != null) {
                picked.add(offer, at.steps());
            }
        }
        return picked.reversed(credit);
    }
}
