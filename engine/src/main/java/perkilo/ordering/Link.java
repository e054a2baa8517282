package perkilo.ordering;

import java.util.List;

/**
 * That an item may be bought in an order, and the offers by which it may.
 *
 * @param id index into all links
 * @param item index of the item
 * @param order index of the order
 * @param offers at least one
 */
record Link(int id, int item, int order, List<Offer> offers) {
    Link {
        offers = List.copyOf(offers);
    }
}
