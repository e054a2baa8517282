package perkilo.purchasing.search;

/** A quote in a period in which it can be bought: one line that a plan may hold. */
final class PackChoice {
    final int id;
    final int quote;
    final int period;
    /** The last period in which it can be used; it may be after the last. */
    final int last;
    /** The cap of the item's supply after a purchase of it. */
    final int cap;
    /** Index of the order that the line would belong to. */
    final int order;

    final LineCosts costs;
    /** Units of the item's grid in one step. */
    final long units;
    /** Cost of keeping one step until the end of the last period, plus a tie-breaker that prefers less leftover. */
    final double keepingPerStep;
    /** The longest line that can be useful. */
    final long mostSteps;

    private final double[] plain;
    private final double[] cheapestFrom;

    PackChoice(
            int id,
            int quote,
            int period,
            int last,
            int cap,
            int order,
            LineCosts costs,
            long units,
            double keepingPerStep,
            long mostSteps) {
        this.id = id;
        this.quote = quote;
        this.period = period;
        this.last = last;
        this.cap = cap;
        this.order = order;
        this.costs = costs;
        this.units = units;
        this.keepingPerStep = keepingPerStep;
        this.mostSteps = mostSteps;
        costs.keep(mostSteps);
        int kept = mostSteps < LineCostTables.LONGEST_TABLE ? (int) mostSteps + 1 : 0;
        plain = new double[kept];
        for (int n = 0; n < kept; n++) {
            plain[n] = costOf(n);
        }
        cheapestFrom = LineCostTables.cheapestFrom(plain, kept - 1);
    }

    /** The cost of a line in home currency, with keeping it in stock, without the order's charges. */
    double cost(long steps) {
        return steps < plain.length ? plain[(int) steps] : costOf(steps);
    }

    private double costOf(long steps) {
        return costs.landed(steps) + steps * keepingPerStep;
    }

    /** By steps: what a line costs; infinite at zero. */
    double[] costs() {
        return plain;
    }

    /** By steps: the cost of the cheapest line of at least so many steps. */
    double[] cheapestFrom() {
        return cheapestFrom;
    }
}
