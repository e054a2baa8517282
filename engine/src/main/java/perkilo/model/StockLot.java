package perkilo.model;

import org.jspecify.annotations.Nullable;
import perkilo.origin.Day;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.units.Measure;

/**
 * A lot of goods on the shelf or on order.
 *
 * @param item the material's or component's name
 * @param quantity in {@code unit}
 * @param unit what the quantity is measured in
 * @param expires the last day it may be used; null if unknown
 * @param expected the day it is expected on; null if it is on the shelf
 * @param origin its row
 */
public record StockLot(
        String item,
        Figure quantity,
        Measure unit,
        @Nullable Day expires,
        @Nullable Day expected,
        Origin origin) {

    /** Whether it has not arrived yet. */
    public boolean isOnOrder() {
        return expected != null;
    }
}
