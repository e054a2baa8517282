package perkilo.purchasing.search;

import java.util.List;

/**
 * One item with its supply and all orders that it may be in.
 *
 * @param grid the positions of its supply
 * @param linksByPeriod by period: the orders that it may be in
 * @param holdingOfNeeds cost of keeping the stock, from its arrival on, less all needs: the part of the holding cost
 *     that no purchase changes (it may be negative, as every purchase is counted from its period to the end)
 */
record WantedItem(SupplyGrid grid, List<List<Link>> linksByPeriod, double holdingOfNeeds) {

    WantedItem {
        linksByPeriod = List.copyOf(linksByPeriod);
    }
}
