package perkilo.model;

import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Day;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.units.Measure;

/**
 * A row of what a run really took.
 *
 * @param run its number or name; empty if there is only one of that product and size
 * @param product its name
 * @param planned units; null if not said
 * @param use of an item; null if the row says only what came out
 * @param made good units of the whole run; null if not said
 * @param hours of work in the whole run; null if not said
 * @param isFaulty whether something in the row was reported as an error
 * @param origin its row
 */
public record ActualRow(
        String run,
        String product,
        @Nullable Figure planned,
        @Nullable Use use,
        @Nullable Figure made,
        @Nullable Figure hours,
        boolean isFaulty,
        Origin origin) {

    /**
     * What was used of an item.
     *
     * @param item its name
     * @param quantity in {@code unit}
     * @param unit what the quantity is measured in
     * @param paid for that quantity, with all charges; null if not said
     * @param currency of the amount; null for the home currency
     * @param day of payment; null if not said
     * @param origin the cell of the item
     */
    public record Use(
            String item,
            Figure quantity,
            Measure unit,
            @Nullable Figure paid,
            @Nullable CurrencyUnit currency,
            @Nullable Day day,
            Origin origin) {}
}
