package perkilo.model;

import perkilo.origin.Figure;
import perkilo.origin.Origin;

/** Something that is made at one time. */
public sealed interface Run {

    /** The cell that asks for it. */
    Origin origin();

    /**
     * Units of a product.
     *
     * @param product the product's name
     * @param units a whole number above zero
     */
    record OfProduct(String product, Figure units, Origin origin) implements Run {}

    /**
     * Bulk of a formula, not filled.
     *
     * @param formula the formula's name
     * @param batchKg above zero
     */
    record OfBulk(String formula, Figure batchKg, Origin origin) implements Run {}
}
