package perkilo.layouts;

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
 * @param listed how the list names it, and its supplier
 * @param pack what one pack holds
 * @param price with the quantity that it begins at, in the pack's unit; null if the list names the pack without a
 *     price: on request, discontinued
 * @param currency currency of the price; null without a price
 * @param terms as far as the list says them; its minimum order is in the pack's unit
 * @param validity the row's own days
 * @param origin the cell of the price
 */
public record ListLine(
        Listed listed,
        Quantity pack,
        Offer.@Nullable PriceBreak price,
        @Nullable CurrencyUnit currency,
        LineTerms terms,
        Validity validity,
        Origin origin) {

    /**
     * How a list names an item; texts that it does not give are empty.
     *
     * @param supplier the supplier that the row names
     * @param item the name
     * @param inci its INCI name
     * @param cas its CAS number
     * @param code the supplier's number for it
     */
    public record Listed(String supplier, String item, String inci, String cas, String code) {}

    /** The same line with its pack in another unit. */
    ListLine in(Quantity other) {
        return new ListLine(listed, other, price, currency, terms, validity, origin);
    }

    /** The item as the list calls it. */
    public String item() {
        return listed.item();
    }

    /** The row's own day; null if it has none. */
    public @Nullable LocalDate quotedOn() {
        return validity.quotedOn();
    }

    /** Whether it has a price. */
    public boolean isPriced() {
        return price != null && currency != null;
    }
}
