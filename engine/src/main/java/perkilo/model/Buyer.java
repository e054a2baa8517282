package perkilo.model;

import perkilo.origin.Origin;

/**
 * Who orders, as a purchase order prints it. A text may have several lines; blank means that it is not known.
 *
 * @param name the company that buys
 * @param address where it is
 * @param deliveryAddress where goods are delivered; blank where that is the address
 * @param contact the person who answers questions about orders
 * @param email where the supplier answers
 * @param taxNumber its number for value added tax
 * @param settings the sheet of the settings; {@link Origin#NONE} if there is none
 */
public record Buyer(
        String name,
        String address,
        String deliveryAddress,
        String contact,
        String email,
        String taxNumber,
        Origin settings) {

    /** Nothing is known. */
    public static final Buyer UNKNOWN = new Buyer("", "", "", "", "", "", Origin.NONE);

    /** Where goods are delivered: the delivery address, or else the address; blank if neither is known. */
    public String deliverTo() {
        return deliveryAddress.isEmpty() ? address : deliveryAddress;
    }
}
