package perkilo.purchasing.search;

import java.util.Arrays;
import java.util.List;

/**
 * The dynamic program of one item over a table of all positions of its supply.
 *
 * <p>Orders are gone through by period and vendor. In each, either nothing is bought, or the charge is paid and a line
 * of each offer may be added. Every step keeps its table of least totals by position, so that the best plan can be read
 * back from the end.
 */
final class GridProgram implements ItemProgram {
    private static final double NEVER = Double.POSITIVE_INFINITY;

    private static final int MOST_POSITIONS = 100_000;
    private static final double MOST_WORK = 5e6;

    private final WantedItem item;
    private final SupplyGrid grid;
    private final int[] offset;
    private final int positions;
    private final Workspace work;
    private final LineShift shift = new LineShift();
    private int endPosition;

    GridProgram(WantedItem item, Workspace work) {
        this.item = item;
        this.grid = item.grid();
        this.work = work;
        offset = new int[grid.bases + 1];
        for (int k = 0; k < grid.bases; k++) {
            offset[k + 1] = offset[k] + (int) grid.width[k];
        }
        positions = offset[grid.bases];
    }

    /** Whether the table is small enough to be gone through again and again. */
    static boolean suits(WantedItem item) {
        SupplyGrid grid = item.grid();
        double positions = 0;
        for (long width : grid.width) {
            positions += width;
        }
        double work = 0;
        for (List<Link> links : item.linksByPeriod()) {
            for (Link link : links) {
                for (PackChoice offer : link.offers()) {
                    if (offer.mostSteps >= LineCostTables.LONGEST_TABLE) {
                        return false;
                    }
                    double pieces = offer.costs.straight() ? 8 : offer.mostSteps;
                    work += positions * Math.min(pieces, positions / offer.units);
                }
            }
        }
        return positions <= MOST_POSITIONS && work <= (grid.periods == 1 ? MOST_WORK : 10 * MOST_WORK);
    }

    @Override
    public double solve(Terms terms) {
        int stage = 0;
        double[] now = work.stage(0, positions);
        Arrays.fill(now, 0, positions, NEVER);
        now[0] = 0;
        for (int t = 0; t < grid.periods; t++) {
            for (Link link : item.linksByPeriod().get(t)) {
                boolean forced = terms.forced(link);
                if (forced && terms.charge[link.id()] == NEVER) {
                    return NEVER;
                }
                if (!forced && terms.pointless(link)) {
                    continue;
                }
                stage = buy(link, terms, forced, now, stage);
                now = work.stage(stage, positions);
            }
            dropShort(t, now);
        }
        work.last = stage;
        return end(now);
    }

    private int buy(Link link, Terms terms, boolean forced, double[] before, int stage) {
        int at = stage;
        double[] bought = null;
        for (PackChoice offer : link.offers()) {
            double[] next = work.stage(++at, positions);
            if (bought == null || terms.atLeast[offer.id] > 0) {
                Arrays.fill(next, 0, positions, NEVER);
            } else {
                System.arraycopy(bought, 0, next, 0, positions);
            }
            double[] from = bought == null ? before : work.smaller(before, bought, positions);
            if (offersFrom(link, offer, terms)) {
                from = bought == null ? work.never(positions) : bought;
            }
            addLine(offer, terms, from, next);
            bought = next;
        }
        double[] after = work.stage(++at, positions);
        double charge = terms.charge[link.id()];
        for (int s = 0; s < positions; s++) {
            double with = bought == null ? NEVER : bought[s] + charge;
            after[s] = forced ? with : Math.min(before[s], with);
        }
        return at;
    }

    /** Whether an earlier offer of the link has to be bought, so that this one cannot be the first. */
    private static boolean offersFrom(Link link, PackChoice offer, Terms terms) {
        for (PackChoice earlier : link.offers()) {
            if (earlier == offer) {
                return false;
            }
            if (terms.atLeast[earlier.id] > 0) {
                return true;
            }
        }
        return false;
    }

    private void addLine(PackChoice offer, Terms terms, double[] from, double[] to) {
        int most = (int) Math.min(offer.mostSteps, terms.atMost[offer.id]);
        int least = (int) Math.max(1, terms.atLeast[offer.id]);
        if (most < least) {
            return;
        }
        double[] cost = work.costs(offer, terms, most);
        double[] cheapest = work.cheapestFrom(offer, terms, most);
        int c = offer.cap;
        int cap = offset[grid.capBase[c]];
        double atCap = to[cap];
        for (int k = 0; k < grid.bases; k++) {
            int begin = offset[k];
            int toCap = (int) Math.min(grid.toCap[c][k], grid.width[k]);
            int low = firstReached(from, begin, begin + toCap);
            int high = lastReached(from, low, begin + toCap);
            atCap = Math.min(atCap, reachCap(offer, from, begin + toCap, low, high, least, most, cheapest));
            shift.run(offer, from, to, begin + toCap, low, high, least, most, cost);
            stay(from, to, begin + toCap, offset[k + 1], cheapest[least]);
        }
        to[cap] = Math.min(atCap, to[cap]);
    }

    private static int firstReached(double[] from, int begin, int end) {
        int s = begin;
        while (s < end && from[s] == NEVER) {
            s++;
        }
        return s;
    }

    private static int lastReached(double[] from, int low, int end) {
        int s = end - 1;
        while (s > low && from[s] == NEVER) {
            s--;
        }
        return s;
    }

    /** Fills the supply up to the cap, with the cheapest line that is long enough. */
    private static double reachCap(
            PackChoice offer, double[] from, int end, int low, int high, int least, int most, double[] cheapest) {
        int units = (int) offer.units;
        int enough = (end - low + units - 1) / units;
        int missing = end - low;
        double best = NEVER;
        for (int s = low; s <= high; s++, missing--) {
            if (missing <= (enough - 1) * units) {
                enough--;
            }
            int line = Math.max(least, enough);
            if (line <= most) {
                best = Math.min(best, from[s] + cheapest[line]);
            }
        }
        return best;
    }

    /** Adds lines at the cap, which supply no more: they are bought for the minimum order value alone. */
    private static void stay(double[] from, double[] to, int begin, int end, double cheapest) {
        for (int s = begin; s < end; s++) {
            to[s] = Math.min(to[s], from[s] + cheapest);
        }
    }

    private void dropShort(int period, double[] now) {
        for (int k = 0; k < grid.bases; k++) {
            int enough = (int) Math.min(grid.width[k], grid.toNeed[period][k]);
            Arrays.fill(now, offset[k], offset[k] + enough, NEVER);
        }
    }

    private double end(double[] now) {
        double best = NEVER;
        for (int k = 0; k < grid.bases; k++) {
            for (int j = 0; j < grid.width[k]; j++) {
                double cost = now[offset[k] + j];
                if (cost < NEVER) {
                    cost -= grid.credit(k, j);
                    if (cost < best) {
                        best = cost;
                        endPosition = offset[k] + j;
                    }
                }
            }
        }
        return best;
    }

    @Override
    public Picks picks(Terms terms) {
        return new Trace(terms).picks();
    }

    /** Reads the best plan back from the end. */
    private final class Trace {
        private final Terms terms;
        private final PickList picked = new PickList();
        private int stage = work.last;
        private int position = endPosition;

        Trace(Terms terms) {
            this.terms = terms;
        }

        Picks picks() {
            for (int t = grid.periods - 1; t >= 0; t--) {
                List<Link> links = item.linksByPeriod().get(t);
                for (int l = links.size() - 1; l >= 0; l--) {
                    Link link = links.get(l);
                    if (terms.forced(link) || !terms.pointless(link)) {
                        unbuy(link);
                    }
                }
            }
            int k = grid.bases - 1;
            while (offset[k] > endPosition) {
                k--;
            }
            return picked.reversed(grid.credit(k, endPosition - offset[k]));
        }

        private void unbuy(Link link) {
            int offers = link.offers().size();
            int beforeStage = stage - offers - 1;
            double[] before = work.stage(beforeStage, positions);
            double[] bought = work.stage(stage - 1, positions);
            boolean used = terms.forced(link) || before[position] > bought[position] + terms.charge[link.id()];
            for (int z = offers - 1; used && z >= 0; z--) {
                PackChoice offer = link.offers().get(z);
                double[] with = work.stage(beforeStage + z + 1, positions);
                double[] without = z == 0 ? work.never(positions) : work.stage(beforeStage + z, positions);
                if (terms.atLeast[offer.id] == 0 && without[position] <= with[position]) {
                    continue;
                }
                double[] first = offersFrom(link, offer, terms) ? work.never(positions) : before;
                used = unline(offer, first, without);
            }
            stage = beforeStage;
        }

        /**
         * Reads one line back.
         *
         * @return whether the order held a line before it
         */
        private boolean unline(PackChoice offer, double[] first, double[] more) {
            Step step = new Step(offer, terms, first, more);
            step.find(position);
            picked.add(offer, step.steps);
            position = step.from;
            return step.more;
        }
    }

    /** Finds the line and the position before it that explain a position's total. */
    private final class Step {
        private final PackChoice offer;
        private final double[] first;
        private final double[] second;
        private final double[] cost;
        private final double[] cheapest;
        private final int least;
        private final int most;
        private double best = NEVER;
        private long steps;
        private int from;
        private boolean more;

        Step(PackChoice offer, Terms terms, double[] first, double[] second) {
            this.offer = offer;
            this.first = first;
            this.second = second;
            most = (int) Math.min(offer.mostSteps, terms.atMost[offer.id]);
            least = (int) Math.max(1, terms.atLeast[offer.id]);
            cost = work.costs(offer, terms, most);
            cheapest = most < least ? cost : work.cheapestFrom(offer, terms, most);
        }

        void find(int position) {
            int c = offer.cap;
            int units = (int) offer.units;
            int cap = offset[grid.capBase[c]];
            for (int k = 0; k < grid.bases; k++) {
                int begin = offset[k];
                int end = begin + (int) Math.min(grid.toCap[c][k], grid.width[k]);
                if (position == cap) {
                    for (int s = begin; s < end; s++) {
                        int enough = Math.max(least, (end - s + units - 1) / units);
                        if (enough <= most && reached(s)) {
                            offer(s, cheapestAt(enough));
                        }
                    }
                }
                if (position >= begin && position < end) {
                    for (int n = least; n <= most && position - n * units >= begin; n++) {
                        offer(position - n * units, n);
                    }
                }
                if (position >= end && position < offset[k + 1]) {
                    offer(position, cheapestAt(least));
                }
            }
        }

        /** The cheapest line of at least so many steps. */
        private int cheapestAt(int enough) {
            int n = enough;
            while (n < most && cost[n] > cheapest[enough]) {
                n++;
            }
            return n;
        }

        private boolean reached(int s) {
            return first[s] < NEVER || second[s] < NEVER;
        }

        private void offer(int s, int n) {
            if (first[s] + cost[n] < best) {
                take(s, n, false, first[s] + cost[n]);
            }
            if (second[s] + cost[n] < best) {
                take(s, n, true, second[s] + cost[n]);
            }
        }

        private void take(int s, int n, boolean fromMore, double total) {
            best = total;
            from = s;
            steps = n;
            more = fromMore;
        }
    }
}
