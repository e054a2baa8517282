package perkilo.pricelists;

import java.math.BigDecimal;
import java.time.LocalDate;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Origin;
import perkilo.units.Measure;

/**
 * One price break of one pack, as a list says it: a row of the long form.
 *
 * @param supplier who sells; empty where the list names nobody in its rows
 * @param item as the list calls it
 * @param inci its INCI name; empty where the list doesn't say
 * @param cas its CAS number; empty where the list doesn't say
 * @param code the supplier's number for it; empty where the list doesn't say
 * @param pack what one pack holds
 * @param from the quantity that the price begins at, in the pack's unit; null for the first pack
 * @param price in {@code currency}; null where the list says that there is none: on request, discontinued
 * @param per what the price is for; null for one pack
 * @param currency what the price is in; null without a price
 * @param minimumOrder in the pack's unit; null where the list doesn't say
 * @param orderMultiple in packs; null where the list doesn't say
 * @param duty in per cent; null where the list doesn't say
 * @param quotedOn the row's own day; null where it has none
 * @param validUntil the row's own last day; null where it has none
 * @param origin the cell of the price
 */
record ListLine(
        String supplier,
        String item,
        String inci,
        String cas,
        String code,
        Quantity pack,
        @Nullable BigDecimal from,
        @Nullable BigDecimal price,
        @Nullable Measure per,
        @Nullable CurrencyUnit currency,
        @Nullable BigDecimal minimumOrder,
        @Nullable BigDecimal orderMultiple,
        @Nullable BigDecimal duty,
        @Nullable LocalDate quotedOn,
        @Nullable LocalDate validUntil,
        Origin origin) {

    /** Whether it has a price. */
    boolean isPriced() {
        return price != null && currency != null;
    }
}
