package perkilo.purchasing.search;

import java.util.List;

/**
 * An item that may be bought in an order, and the offers for it there.
 *
 * @param id index into all links
 * @param item index of the item
 * @param order index of the order
 * @param offers at least one
 * @param last the last period in which the item can be used if it comes with the order; it may be after the last
 * @param covers whether purchases here can cover a need; if not, they can only help to reach a minimum order value, or
 *     to lower the average rate of duty
 * @param mayLowerDuty whether more goods than needed may pay because they lower the duty on the order's charges
 */
record Link(int id, int item, int order, List<PackChoice> offers, int last, boolean covers, boolean mayLowerDuty) {
    Link {
        offers = List.copyOf(offers);
    }
}
