package perkilo.reading;

import java.time.LocalDate;
import java.util.Optional;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.offers.PackOffered;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.reading.table.TableRow;
import perkilo.units.Measure;

/**
 * One price break of one offer, as its row says.
 *
 * @param row where it stands
 * @param origin its first cell that has a column
 * @param supplier as typed
 * @param item as typed
 * @param packSize in {@code packUnit}
 * @param packUnit what the pack is measured in
 * @param from in the pack unit; null for the first pack
 * @param price in {@code currency}
 * @param per what the price is for; null for one pack
 * @param currency what the price is in
 * @param minimumOrder in the pack unit; null where blank
 * @param orderMultiple null where blank
 * @param duty null where blank
 * @param quotedOn null where blank
 * @param validUntil null where blank
 */
record OfferRow(
        TableRow row,
        Origin origin,
        String supplier,
        String item,
        Figure packSize,
        Measure packUnit,
        @Nullable Figure from,
        Figure price,
        @Nullable Measure per,
        CurrencyUnit currency,
        @Nullable Figure minimumOrder,
        @Nullable Figure orderMultiple,
        @Nullable Figure duty,
        @Nullable LocalDate quotedOn,
        @Nullable LocalDate validUntil) {

    /** Supplier, item and pack: what newer quotes supersede older ones of. */
    PackOffered pack() {
        return PackOffered.of(supplier, item, packSize.value(), packUnit);
    }

    /** The day of the quote; empty where it is not known. */
    Optional<LocalDate> quoted() {
        return Optional.ofNullable(quotedOn);
    }
}
