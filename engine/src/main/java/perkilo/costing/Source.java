package perkilo.costing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;

/**
 * The source of an item of a run: the market, or the house.
 *
 * @param item the item
 * @param offered its offers on the market
 * @param housePrice price of a kilogram that is not bought; null if it has to be bought
 */
record Source(Item item, Assortment offered, @Nullable Figure housePrice) {

    /** The sources of a run's items, in their order. */
    static List<Source> of(Market market, RunNeeds needs) {
        List<Source> sources = new ArrayList<>(needs.items().size());
        for (Item item : needs.items()) {
            Assortment offered = market.assortment(item.key());
            sources.add(new Source(item, offered, market.housePrice(item, offered)));
        }
        return sources;
    }

    /** Whether it is bought. */
    boolean isBought() {
        return housePrice == null && item.isNeeded();
    }
}
