package perkilo.model;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.units.Measure;

/**
 * Something on the shelf.
 *
 * @param item the material's or component's name
 * @param quantity in {@code unit}
 * @param unit what the quantity is measured in
 * @param expires the last day it may be used; null where not known
 * @param origin its row
 */
public record StockLot(
        String item,
        Figure quantity,
        Measure unit,
        @Nullable LocalDate expires,
        Origin origin) {}
