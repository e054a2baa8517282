package perkilo.quotes;

import perkilo.model.Names;
import perkilo.model.Offer;
import perkilo.units.Measure;

/**
 * What is sold by whom in which pack: what quotes of different days have in common.
 *
 * @param supplier by {@link Names#key}
 * @param item by {@link Names#key}
 * @param size in {@code unit}, in its shortest form
 * @param unit what the pack is measured in
 */
record PackOffered(String supplier, String item, String size, Measure unit) {

    static PackOffered of(Offer offer) {
        return new PackOffered(
                Names.key(offer.supplier()),
                Names.key(offer.item()),
                offer.packSize().value().stripTrailingZeros().toPlainString(),
                offer.packUnit());
    }
}
