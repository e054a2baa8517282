package perkilo.purchasing.search;

import java.util.ArrayList;
import java.util.List;

/**
 * The dynamic program of one item over lists of positions. Kept are the positions that no position further on beats in
 * cost, and from which the need can still be met for no more than the cost of a known plan.
 *
 * <p>It finds the same plans as {@link GridProgram}, and the grid may be very fine: pounds and kilograms mixed, or
 * hundreds of thousands of single pieces.
 */
final class ListProgram implements ItemProgram {
    private static final int MOST_LINES = 1_000_000;

    private final WantedItem item;
    private final SupplyGrid grid;
    private final KnownPlan known;
    private Label end = Label.START;
    private boolean thinned;

    ListProgram(WantedItem item) {
        this.item = item;
        this.grid = item.grid();
        known = new KnownPlan(item);
    }

    @Override
    public double solve(Terms terms) {
        Outlook outlook = new Outlook(item, terms, known.total(terms));
        List<Label> now = List.of(Label.START);
        thinned = false;
        for (int t = 0; t < grid.periods; t++) {
            for (Link link : item.linksByPeriod().get(t)) {
                if (terms.forced(link) || !terms.pointless(link)) {
                    now = buy(link, terms, outlook, now);
                }
            }
            now = enough(t, now);
        }
        double total = end(now);
        return thinned ? Math.min(total, outlook.atLeast()) : total;
    }

    private List<Label> buy(Link link, Terms terms, Outlook outlook, List<Label> before) {
        boolean forced = terms.forced(link);
        double charge = terms.charge[link.id()];
        if (charge == Double.POSITIVE_INFINITY) {
            return List.of();
        }
        List<Label> first = before;
        List<Label> bought = List.of();
        for (PackChoice offer : link.offers()) {
            outlook.pass(offer);
            List<Label> lines = new ArrayList<>();
            LineSteps steps = new LineSteps(grid, offer, terms, outlook);
            extend(steps, first, charge, lines);
            extend(steps, bought, charge, lines);
            if (terms.atLeast[offer.id] > 0) {
                first = List.of();
            } else {
                lines.addAll(bought);
            }
            bought = few(Frontier.of(lines, grid));
        }
        List<Label> after = new ArrayList<>(forced ? List.of() : before);
        bought.forEach(label -> after.add(label.charged(charge)));
        after.removeIf(label -> outlook.excess(label.base(), label.units(), label.cost()) > 0);
        return few(Frontier.of(after, grid));
    }

    private void extend(LineSteps steps, List<Label> labels, double charge, List<Label> lines) {
        for (Label label : labels) {
            steps.extend(label, charge, lines);
            if (lines.size() > MOST_LINES) {
                thinned = true;
                return;
            }
        }
        thinned |= steps.leftOut();
    }

    private List<Label> few(List<Label> labels) {
        if (!Frontier.isTooLong(labels)) {
            return labels;
        }
        thinned = true;
        return Frontier.thinned(labels);
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
            PackChoice offer = label.offer();
            if (offer != null) {
                picked.add(offer, label.steps());
            }
        }
        Picks picks = picked.reversed(grid.credit(end.base(), end.units()));
        known.remember(picks);
        return picks;
    }
}
