package perkilo.purchasing.search;

import java.util.List;

/** The lines of one offer that are worth trying from a position. */
final class LineSteps {
    /** The most lines of a linear piece that are tried from one position. */
    private static final long MOST = 20_000;

    private final SupplyGrid grid;
    private final PackChoice offer;
    private final Terms terms;
    private final Outlook outlook;
    private final double rounding;
    private final long least;
    private final long most;
    private boolean leftOut;

    LineSteps(SupplyGrid grid, PackChoice offer, Terms terms, Outlook outlook) {
        this.grid = grid;
        this.offer = offer;
        this.terms = terms;
        this.outlook = outlook;
        rounding = 4 * terms.roundingError(offer);
        least = Math.max(Math.max(1, offer.costs.fewestSteps), terms.atLeast[offer.id]);
        most = Math.min(offer.mostSteps, terms.atMost[offer.id]);
    }

    /** Whether lines had to be left out because they were too many. */
    boolean leftOut() {
        return leftOut;
    }

    /** Adds the positions that lines lead to from {@code label}, if the order still has to be charged for. */
    void extend(Label label, double charge, List<Label> to) {
        if (most < least) {
            return;
        }
        long toCap = grid.toCap[offer.cap][label.base()] - label.units();
        long filling = Math.max(least, toCap <= 0 ? 0 : (toCap + offer.units - 1) / offer.units);
        long last = Math.min(filling - 1, most);
        long n = least;
        while (n <= last) {
            long end = Math.min(last, offer.costs.nextPiece(n) - 1);
            addPiece(label, n, end, charge, to);
            n = end + 1;
        }
        if (filling <= most) {
            long steps = terms.cheapestFrom(offer, filling, most);
            if (toCap <= 0) {
                add(label, label.base(), label.units(), steps, charge, to);
            } else {
                add(label, grid.capBase[offer.cap], 0, steps, charge, to);
            }
        }
    }

    /**
     * Adds the lines of a linear piece that may be part of the best plan.
     *
     * <p>Their cost, and the least total that they lead to, are linear in their length, but for rounding. If longer
     * lines cost less, the longest beats the others. Lengths whose least total is above that of a known plan are left
     * out.
     */
    private void addPiece(Label label, long first, long last, double charge, List<Label> to) {
        double slope = (terms.cost(offer, last) - terms.cost(offer, first)) / Math.max(1, last - first);
        long from = slope < 0 ? Math.max(first, last - 1 - (long) (rounding / -slope)) : first;
        long end = last;
        if (grid.mostCredit() == 0) {
            double atFrom = excess(label, from, charge) - rounding;
            double atEnd = excess(label, end, charge) - rounding;
            if (Math.min(atFrom, atEnd) > 0) {
                return;
            }
            double rise = (atEnd - atFrom) / Math.max(1, end - from);
            long crossing = (long) (-atFrom / rise);
            end = atEnd > 0 ? Math.min(end, from + 1 + crossing) : end;
            from = atFrom > 0 ? from + crossing : from;
        }
        long every = (end - from) / MOST + 1;
        leftOut |= every > 1;
        for (long n = from; n <= end; n += every) {
            add(label, label.base(), label.units() + n * offer.units, n, charge, to);
        }
    }

    private double excess(Label label, long steps, double charge) {
        double cost = label.cost() + terms.cost(offer, steps) + charge;
        return outlook.excess(label.base(), label.units() + steps * offer.units, cost);
    }

    private void add(Label label, int base, long units, long steps, double charge, List<Label> to) {
        double cost = label.cost() + terms.cost(offer, steps);
        if (outlook.excess(base, units, cost + charge) <= 0) {
            to.add(new Label(base, units, cost, label, offer, steps));
        }
    }
}
