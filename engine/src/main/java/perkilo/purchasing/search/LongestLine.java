package perkilo.purchasing.search;

/**
 * The longest useful line of one offer.
 *
 * <p>Once a line covers all the need that it can, and reaches the vendor's whole minimum order value by itself, a
 * longer one at the same price is never better. So in each price break only the shortest such line counts. It does not
 * count if one of an earlier break is cheaper: buying more to reach a break pays only if the whole line gets cheaper.
 */
final class LongestLine {

    private LongestLine() {}

    /**
     * The most steps that can be useful.
     *
     * <p>If an order's lines have several rates of duty: once its goods are worth {@code mostExtraDuty}, more goods of
     * a line change the duty on the order's charges by less than they cost. Below that a longer line may pay although
     * it covers no more. And a line of a later price break that costs more by less than {@code mostExtraDuty} may pay
     * because its goods are worth less.
     *
     * @param usefulSteps steps that cover all need that the line could cover
     * @param mostExtraDuty the most that the order's charges pay beyond the lowest rate, in home currency
     * @param tiny whether the order's goods may be worth less than that
     * @return zero if no line is useful
     */
    static long steps(LineCosts costs, long usefulSteps, double mostExtraDuty, boolean tiny) {
        if (usefulSteps == 0 && !countsForMinimum(costs) && !tiny) {
            return 0;
        }
        long longest = 0;
        double cheapest = Double.POSITIVE_INFINITY;
        for (int tier = 0; tier < costs.tiers(); tier++) {
            long start = costs.tierStart(tier);
            if (start > costs.tierEnd(tier)) {
                continue;
            }
            long from = Math.max(start, usefulSteps);
            if (costs.landed(Math.min(from, costs.tierEnd(tier))) >= cheapest + mostExtraDuty && start > usefulSteps) {
                continue;
            }
            Long whole = costs.stepsForWhole(tier);
            long enough = Math.max(from, whole == null ? 0 : whole);
            enough = tiny ? Math.max(enough, costs.stepsFor(mostExtraDuty, tier)) : enough;
            long here = Math.min(enough, costs.tierEnd(tier));
            longest = Math.max(longest, here);
            if (enough <= costs.tierEnd(tier) && whole != null) {
                cheapest = Math.min(cheapest, costs.landed(here));
            }
        }
        return longest;
    }

    private static boolean countsForMinimum(LineCosts costs) {
        for (int tier = 0; tier < costs.tiers(); tier++) {
            Long whole = costs.stepsForWhole(tier);
            if (whole == null || whole > 0) {
                return true;
            }
        }
        return false;
    }
}
