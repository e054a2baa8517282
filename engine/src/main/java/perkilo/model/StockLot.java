package perkilo.model;

import org.jspecify.annotations.Nullable;
import perkilo.origin.Day;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.units.Measure;

/**
 * Something on the shelf, or on order.
 *
 * @param item the material's or component's name
 * @param quantity in {@code unit}
 * @param unit what the quantity is measured in
 * @param expires the last day it may be used; null where not known
 * @param expected the day it is expected on; null where it is on the shelf
 * @param origin its row
 */
public record StockLot(
        String item,
        Figure quantity,
        Measure unit,
        @Nullable Day expires,
        @Nullable Day expected,
        Origin origin) {

    /** Whether it is not on the shelf yet. */
    public boolean isOnOrder() {
        return expected != null;
    }
}
