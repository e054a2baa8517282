package perkilo.purchasing.search;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The least cost of covering the rest of the need, from any position on.
 *
 * <p>Every missing unit costs at least the best price per unit among the remaining offers. If a reward makes the cost
 * of a line negative, it brings no more than its best length does. A position whose least total is above that of a
 * known plan is given up.
 */
final class Outlook {
    private final SupplyGrid grid;
    private final Terms terms;
    private final double most;
    private final Map<PackChoice, Rest> after = new HashMap<>();
    private final Rest atStart;
    private Rest now;

    /**
     * Prepares the prices.
     *
     * @param known total of a plan; infinite if none is known
     */
    Outlook(WantedItem item, Terms terms, double known) {
        grid = item.grid();
        this.terms = terms;
        most = known + 1e-9 * (1 + Math.abs(known)) + grid.mostCredit();
        Rest rest = new Rest(Double.POSITIVE_INFINITY, 0);
        for (int t = grid.periods - 1; t >= 0; t--) {
            List<Link> links = item.linksByPeriod().get(t);
            for (int l = links.size() - 1; l >= 0; l--) {
                List<PackChoice> offers = links.get(l).offers();
                boolean open = terms.charge[links.get(l).id()] < Double.POSITIVE_INFINITY;
                for (int o = offers.size() - 1; o >= 0; o--) {
                    after.put(offers.get(o), rest);
                    rest = open ? rest.with(offers.get(o), leastPerUnit(offers.get(o))) : rest;
                }
            }
        }
        atStart = rest;
        now = rest;
    }

    private double leastPerUnit(PackChoice offer) {
        double least = Double.POSITIVE_INFINITY;
        long last = Math.min(offer.mostSteps, terms.atMost[offer.id]);
        long n = Math.max(1, offer.costs.fewestSteps);
        double rounding = 4 * terms.roundingError(offer);
        while (n <= last) {
            long end = Math.min(last, offer.costs.nextPiece(n) - 1);
            least = Math.min(least, (terms.cost(offer, n) - rounding) / (n * (double) offer.units));
            least = Math.min(least, (terms.cost(offer, end) - rounding) / (end * (double) offer.units));
            n = end + 1;
        }
        return least;
    }

    /** Removes an offer from the remaining ones. */
    void pass(PackChoice offer) {
        now = after.getOrDefault(offer, now);
    }

    /** A rough bound on the total of any plan, from prices per unit alone. */
    double atLeast() {
        return atStart.of(grid.toNeed[grid.periods - 1][0]) - grid.mostCredit();
    }

    /** By how much the least total from a position on exceeds the known plan; zero or less if it may be better. */
    double excess(int base, long units, double cost) {
        return cost + now.of(grid.toNeed[grid.periods - 1][base] - units) - most;
    }

    /**
     * The remaining offers.
     *
     * @param perUnit the best price per unit; zero if the cost of some line is negative
     * @param gain the most that lines with a negative cost bring; zero or below
     */
    private record Rest(double perUnit, double gain) {

        Rest with(PackChoice offer, double leastPerUnit) {
            double longest = offer.mostSteps * (double) offer.units;
            return new Rest(
                    Math.max(0, Math.min(perUnit, leastPerUnit)),
                    gain + (leastPerUnit < 0 ? leastPerUnit * longest : 0));
        }

        double of(long missing) {
            return missing > 0 ? gain + missing * perUnit : gain;
        }
    }
}
