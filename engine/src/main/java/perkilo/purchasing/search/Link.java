package perkilo.purchasing.search;

import java.util.List;

/**
 * That an item may be bought in an order, and the offers by which it may.
 *
 * @param id index into all links
 * @param item index of the item
 * @param order index of the order
 * @param offers at least one
 * @param covers whether what is bought here can cover a need; else it can only help to make an order large enough
 */
record Link(int id, int item, int order, List<PackChoice> offers, boolean covers) {
    Link {
        offers = List.copyOf(offers);
    }
}
