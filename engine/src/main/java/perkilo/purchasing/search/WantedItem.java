package perkilo.purchasing.search;

import java.util.List;

/**
 * One item with all that it can be bought by.
 *
 * @param grid the positions of its supply
 * @param linksByPeriod by period: the orders it may stand in
 * @param holdingOfNeeds what the stock, from its arrival on, less all needs costs to keep: the part of the holding cost
 *     that no purchase changes (it may be negative, as every purchase is counted from its period to the end)
 */
record WantedItem(SupplyGrid grid, List<List<Link>> linksByPeriod, double holdingOfNeeds) {

    WantedItem {
        linksByPeriod = List.copyOf(linksByPeriod);
    }
}
