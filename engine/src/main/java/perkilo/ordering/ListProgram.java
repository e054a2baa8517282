package perkilo.ordering;

import java.util.ArrayList;
import java.util.List;

/**
 * The dynamic program of one item over lists of the positions that are worth keeping: those to which no position
 * further on is as cheap.
 *
 * <p>It does the same as {@link GridProgram}, and does not mind how fine the grid is: pounds and kilograms mixed, or
 * single pieces by the hundred thousand.
 */
final class ListProgram implements ItemProgram {
    private final Item item;
    private final SupplyGrid grid;
    private Label end = Label.START;

    ListProgram(Item item) {
        this.item = item;
        this.grid = item.grid();
    }

    @Override
    public double solve(Terms terms) {
        List<Label> now = List.of(Label.START);
        for (int t = 0; t < grid.periods; t++) {
            for (Link link : item.linksByPeriod().get(t)) {
                now = buy(link, terms, now);
            }
            now = enough(t, now);
        }
        return end(now);
    }

    private List<Label> buy(Link link, Terms terms, List<Label> before) {
        boolean forced = terms.forced(link);
        double charge = terms.charge[link.id()];
        if (charge == Double.POSITIVE_INFINITY) {
            return forced ? List.of() : before;
        }
        List<Label> first = before;
        List<Label> bought = List.of();
        for (Offer offer : link.offers()) {
            List<Label> lines = new ArrayList<>();
            LineSteps steps = new LineSteps(grid, offer, terms);
            first.forEach(label -> steps.extend(label, lines));
            bought.forEach(label -> steps.extend(label, lines));
            if (terms.atLeast[offer.id] > 0) {
                first = List.of();
            } else {
                lines.addAll(bought);
            }
            bought = Frontier.of(lines, grid);
        }
        List<Label> after = new ArrayList<>(forced ? List.of() : before);
        bought.forEach(label -> after.add(label.charged(charge)));
        return Frontier.of(after, grid);
    }

    private List<Label> enough(int period, List<Label> labels) {
        return labels.stream()
                .filter(label -> label.units() >= grid.toNeed[period][label.base()])
                .toList();
    }

    private double end(List<Label> labels) {
        double best = Double.POSITIVE_INFINITY;
        for (int l = labels.size() - 1; l >= 0; l--) {
            Label label = labels.get(l);
            double cost = label.cost() - grid.credit(label.base(), label.units());
            if (cost < best) {
                best = cost;
                end = label;
            }
        }
        return best;
    }

    @Override
    public Picks picks(Terms terms) {
        PickList picked = new PickList();
        for (Label label = end; label != null; label = label.before()) {
            Offer offer = label.offer();
            if (offer != null) {
                picked.add(offer, label.steps());
            }
        }
        return picked.reversed(grid.credit(end.base(), end.units()));
    }
}
