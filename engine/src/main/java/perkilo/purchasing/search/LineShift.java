package perkilo.purchasing.search;

/**
 * Lifts all positions of a table by lines of one offer.
 *
 * <p>Within a price break a line's cost is linear in its length. So for a long break one sweep with a sliding minimum
 * finds the best length for every position; short breaks are gone through length by length.
 */
final class LineShift {
    private static final int SHORT = 8;

    private int[] queue = {};

    /**
     * Lines of {@code least} to {@code most} steps from positions {@code low} to {@code high}, ending before
     * {@code end}.
     */
    void run(
            PackChoice offer,
            double[] from,
            double[] to,
            int end,
            int low,
            int high,
            int least,
            int most,
            double[] cost) {
        int units = (int) offer.units;
        int longest = Math.min(most, (end - 1 - low) / units);
        int n = Math.max(least, (int) Math.min(longest + 1L, offer.costs.fewestSteps));
        while (n <= longest) {
            int last = offer.costs.straight() ? (int) Math.min(longest, offer.costs.nextPiece(n) - 1) : n;
            if (last - n < SHORT) {
                for (int m = n; m <= last; m++) {
                    one(from, to, end, low, high, m * units, cost[m]);
                }
            } else {
                many(from, to, end, low, high, units, n, last, cost);
            }
            n = last + 1;
        }
    }

    private static void one(double[] from, double[] to, int end, int low, int high, int by, double cost) {
        int last = Math.min(high, end - 1 - by);
        for (int s = low; s <= last; s++) {
            to[s + by] = Math.min(to[s + by], from[s] + cost);
        }
    }

    private void many(
            double[] from, double[] to, int end, int low, int high, int units, int first, int last, double[] cost) {
        double slope = (cost[last] - cost[first]) / (last - first);
        double level = cost[first] - slope * first;
        if (queue.length < (high - low) / units + 2) {
            queue = new int[2 * ((high - low) / units + 2)];
        }
        for (int start = low; start < low + units && start <= high; start++) {
            sweep(from, to, end, start, high, units, first, last, slope, level);
        }
    }

    /**
     * One residue class: the cheapest start among those that are {@code first} to {@code last} steps back, for each
     * position.
     */
    private void sweep(
            double[] from,
            double[] to,
            int end,
            int start,
            int high,
            int units,
            int first,
            int last,
            double slope,
            double level) {
        int head = 0;
        int tail = 0;
        int positions = (end - 1 - start) / units;
        int starts = (high - start) / units;
        for (int i = first; i <= positions; i++) {
            int entering = i - first;
            if (entering <= starts) {
                double value = from[start + entering * units] - slope * entering;
                if (value < Double.POSITIVE_INFINITY) {
                    while (tail > head && from[start + queue[tail - 1] * units] - slope * queue[tail - 1] >= value) {
                        tail--;
                    }
                    queue[tail++] = entering;
                }
            }
            if (tail > head && queue[head] < i - last) {
                head++;
            }
            if (tail > head) {
                int best = queue[head];
                int at = start + i * units;
                to[at] = Math.min(to[at], from[start + best * units] + level + slope * (i - best));
            }
        }
    }
}
