package perkilo.reading;

import java.util.Locale;
import javax.money.CurrencyUnit;
import perkilo.model.Batching;
import perkilo.origin.Figure;
import perkilo.reading.table.TableRow;
import perkilo.schema.BatchesSheet;

/** Reads how a formula is made. */
final class BatchRow {

    private BatchRow() {}

    /**
     * The batching of a row.
     *
     * @param home what quality control is paid in
     */
    static Batching read(TableRow row, CurrencyUnit home) {
        Batching batching = new Batching(
                row.figure(BatchesSheet.VESSEL_MAX),
                row.figure(BatchesSheet.VESSEL_MIN, Figure.ZERO),
                row.figure(BatchesSheet.HOLD_UP, Figure.ZERO),
                row.figure(BatchesSheet.HOURS_PER_BATCH, Figure.ZERO),
                row.figure(BatchesSheet.HOURS_PER_KG, Figure.ZERO),
                Amounts.in(row, BatchesSheet.QUALITY_CONTROL, home, Figure.ZERO),
                row.figure(BatchesSheet.FINAL_PH),
                isRinseOff(row),
                row.origin(BatchesSheet.FORMULA));
        checkVessel(row, batching);
        return batching;
    }

    private static void checkVessel(TableRow row, Batching batching) {
        Figure max = batching.vesselMax();
        if (max == null) {
            return;
        }
        if (max.value().compareTo(batching.holdUp().value()) <= 0) {
            row.findings()
                    .error(
                            row.origin(BatchesSheet.VESSEL_MAX),
                            "Vessel max of %s kg is not above the hold-up of %s kg, so nothing would come out"
                                    .formatted(plain(max), plain(batching.holdUp())));
        }
        if (batching.vesselMin().value().compareTo(max.value()) > 0) {
            row.findings()
                    .error(
                            row.origin(BatchesSheet.VESSEL_MIN),
                            "Vessel min of %s kg is above Vessel max of %s kg"
                                    .formatted(plain(batching.vesselMin()), plain(max)));
        }
    }

    private static boolean isRinseOff(TableRow row) {
        String kind = row.text(BatchesSheet.KIND).toLowerCase(Locale.ROOT).replaceAll("[^a-z]", "");
        if (kind.equals("rinseoff")) {
            return true;
        }
        if (!kind.isEmpty() && !kind.equals("leaveon")) {
            row.findings()
                    .error(
                            row.origin(BatchesSheet.KIND),
                            "Kind is \"%s\"; expected leave-on or rinse-off".formatted(row.text(BatchesSheet.KIND)));
        }
        return false;
    }

    private static String plain(Figure figure) {
        return figure.value().toPlainString();
    }
}
