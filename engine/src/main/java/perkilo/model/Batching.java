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
 * @param kind what kind of product it makes; leave-on if nothing is given
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
        ProductKind kind,
        Origin origin) {

    /** Made in one batch of any size, at no cost. */
    public static final Batching ANY = new Batching(
            null,
            Figure.ZERO,
            Figure.ZERO,
            Figure.ZERO,
            Figure.ZERO,
            Figure.ZERO,
            null,
            ProductKind.LEAVE_ON,
            Origin.NONE);

    /** Whether the product is rinsed off; false for leave-on. */
    public boolean rinseOff() {
        return kind.rinseOff();
    }
}
