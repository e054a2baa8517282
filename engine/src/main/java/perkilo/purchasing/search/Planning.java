package perkilo.purchasing.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.purchasing.Need;

/** Plans items one by one, under given terms, and joins the results. */
final class Planning implements ItemPlans {
    final SearchMarket market;
    final Incumbent incumbent;

    private final List<ItemProgram> programs = new ArrayList<>();

    Planning(SearchMarket market) {
        this.market = market;
        incumbent = new Incumbent(market.ceiling());
        Workspace work = new Workspace();
        for (int i = 0; i < market.items.size(); i++) {
            programs.add(program(market.items.get(i), market.problem.needs().get(i), work));
        }
    }

    private static ItemProgram program(WantedItem item, Need need, Workspace work) {
        if (RotatingProgram.suits(item, need)) {
            return new RotatingProgram(item, need);
        }
        if (!item.grid().outlasting().lots().isEmpty()) {
            return new ShelfProgram(item);
        }
        return GridProgram.suits(item) ? new GridProgram(item, work) : new ListProgram(item);
    }

    /** Whether the needs of an item can be covered at all. */
    boolean canCover(int item) {
        return solve(item, within(allOrders())) < Double.POSITIVE_INFINITY;
    }

    int items() {
        return programs.size();
    }

    @Override
    public double solve(int item, Terms terms) {
        return programs.get(item).solve(terms);
    }

    @Override
    public Picks picks(int item, Terms terms) {
        return programs.get(item).picks(terms);
    }

    /**
     * The cheapest purchase of an item in given orders that are placed anyway.
     *
     * @return null if its needs cannot be covered
     */
    @Nullable Picks within(int item, Terms terms) {
        return solve(item, terms) < Double.POSITIVE_INFINITY ? picks(item, terms) : null;
    }

    /** Terms that allow every item in the given orders, free of charge, and in no others. */
    Terms within(boolean[] orders) {
        Terms terms = new Terms(market);
        for (Link link : market.links) {
            terms.charge[link.id()] = orders[link.order()] ? 0 : Double.POSITIVE_INFINITY;
        }
        return terms;
    }

    boolean[] allOrders() {
        boolean[] all = new boolean[market.orders.count];
        Arrays.fill(all, true);
        return all;
    }
}
