package perkilo.orderplan;

import java.util.List;
import perkilo.costing.Item;

/**
 * An item that runs need, with the days that its needs are planned for.
 *
 * @param item as in the first run that needs it
 * @param uses the runs that need it, in the order of the demand
 * @param stock on the shelf and on order, what expires first at the front
 */
record Wanted(Item item, List<HorizonItem.Use> uses, List<StockOnHand> stock) {

    Wanted {
        uses = List.copyOf(uses);
        stock = List.copyOf(stock);
    }

    /** The same item with other uses. */
    Wanted with(List<HorizonItem.Use> others) {
        return new Wanted(item, others, stock);
    }

    /** Whether anything of it is planned. */
    boolean isPlanned() {
        return uses.stream().anyMatch(use -> use.quantity().signum() > 0);
    }
}
