package perkilo.ordering;

import java.util.List;

/** The lines of one offer that are worth trying from a position. */
final class LineSteps {
    private final SupplyGrid grid;
    private final Offer offer;
    private final Terms terms;
    private final long least;
    private final long most;

    LineSteps(SupplyGrid grid, Offer offer, Terms terms) {
        this.grid = grid;
        this.offer = offer;
        this.terms = terms;
        least = Math.max(Math.max(1, offer.costs.fewestSteps), terms.atLeast[offer.id]);
        most = Math.min(offer.mostSteps, terms.atMost[offer.id]);
    }

    /** Adds the positions that lines lead to from {@code label}. */
    void extend(Label label, List<Label> to) {
        if (most < least) {
            return;
        }
        long toCap = grid.toCap[offer.period][label.base()] - label.units();
        long filling = Math.max(least, toCap <= 0 ? 0 : (toCap + offer.units - 1) / offer.units);
        for (long n = least; n < filling && n <= most; n++) {
            to.add(after(label, label.base(), label.units() + n * offer.units, n));
        }
        if (filling <= most) {
            long n = terms.cheapestFrom(offer, filling, most);
            to.add(toCap <= 0 ? after(label, label.base(), label.units(), n) : after(label, capBase(), 0, n));
        }
    }

    private int capBase() {
        return grid.capBase[offer.period];
    }

    private Label after(Label label, int base, long units, long steps) {
        return new Label(base, units, label.cost() + terms.cost(offer, steps), label, offer, steps);
    }
}
