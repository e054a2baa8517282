package perkilo.model;

import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.origin.Origin;

/**
 * How a formula is made.
 *
 * @param vesselMax the largest batch, in kg, hold-up included; null for no limit
 * @param vesselMin the smallest batch, in kg
 * @param holdUp bulk that stays in kettle and lines, in kg per batch
 * @param hoursPerBatch making, for each batch
 * @param hoursPerKg making, for each kilogram of bulk
 * @param qualityControlPerBatch in home currency
 * @param finalPh null if unknown
 * @param rinseOff whether it is rinsed off; false for leave-on, and if nothing is given
 * @param origin its row
 */
public record Batching(
        @Nullable Figure vesselMax,
        Figure vesselMin,
        Figure holdUp,
        Figure hoursPerBatch,
        Figure hoursPerKg,
        Figure qualityControlPerBatch,
        @Nullable Figure finalPh,
        boolean rinseOff,
        Origin origin) {

    /** Made in one batch of any size, at no cost. */
    public static final Batching ANY = new Batching(
            null, Figure.ZERO, Figure.ZERO, Figure.ZERO, Figure.ZERO, Figure.ZERO, null, false, Origin.NONE);
}
