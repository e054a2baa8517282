package perkilo.pricelists;

import java.time.LocalDate;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.offers.LineTerms;
import perkilo.offers.Offer;
import perkilo.offers.Validity;
import perkilo.origin.Origin;

/**
 * One price break of one pack, as a list says it: a row of the long form.
 *
 * @param listed what the list calls it, and whose it is
 * @param pack what one pack holds
 * @param price with the quantity that it begins at, in the pack's unit; null where the list says that there is none: on
 *     request, discontinued
 * @param currency what the price is in; null without a price
 * @param terms as far as the list says them; its minimum order is in the pack's unit
 * @param validity the row's own days
 * @param origin the cell of the price
 */
record ListLine(
        Listed listed,
        Quantity pack,
        Offer.@Nullable PriceBreak price,
        @Nullable CurrencyUnit currency,
        LineTerms terms,
        Validity validity,
        Origin origin) {

    /**
     * What a list calls something; empty where it doesn't say.
     *
     * @param supplier who sells, where the rows name them
     * @param item the name
     * @param inci its INCI name
     * @param cas its CAS number
     * @param code the supplier's number for it
     */
    record Listed(String supplier, String item, String inci, String cas, String code) {}

    /** The item as the list calls it. */
    String item() {
        return listed.item();
    }

    /** The row's own day; null where it has none. */
    @Nullable LocalDate quotedOn() {
        return validity.quotedOn();
    }

    /** Whether it has a price. */
    boolean isPriced() {
        return price != null && currency != null;
    }
}
