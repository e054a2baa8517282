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
     * @param home the currency of the cost of quality control
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
                            FormulaMessages.nothingComesOut(
                                    max.value(), batching.holdUp().value()));
        }
        if (batching.vesselMin().value().compareTo(max.value()) > 0) {
            row.findings()
                    .error(
                            row.origin(BatchesSheet.VESSEL_MIN),
                            FormulaMessages.vesselMinAboveMax(
                                    batching.vesselMin().value(), max.value()));
        }
    }

    private static boolean isRinseOff(TableRow row) {
        String kind = row.text(BatchesSheet.KIND).toLowerCase(Locale.ROOT).replaceAll("[^a-z]", "");
        if (kind.equals("rinseoff")) {
            return true;
        }
        if (!kind.isEmpty() && !kind.equals("leaveon")) {
            row.findings().error(row.origin(BatchesSheet.KIND), FormulaMessages.kind(row.text(BatchesSheet.KIND)));
        }
        return false;
    }
}
