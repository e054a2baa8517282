package perkilo.costing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;

/**
 * Where an item of a run comes from.
 *
 * @param item what is needed
 * @param offered what the market offers of it
 * @param housePrice what a kilogram costs that is not bought; null where it has to be
 */
record Source(Item item, Assortment offered, @Nullable Figure housePrice) {

    /** Where the items of a run come from, in their order. */
    static List<Source> of(Market market, RunNeeds needs) {
        List<Source> sources = new ArrayList<>(needs.items().size());
        for (Item item : needs.items()) {
            Assortment offered = market.assortment(item.key());
            sources.add(new Source(item, offered, market.housePrice(item, offered)));
        }
        return sources;
    }

    /** Whether anything of it is bought. */
    boolean isBought() {
        return housePrice == null && item.isNeeded();
    }
}
