package perkilo.reading;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import javax.money.CurrencyUnit;
import perkilo.model.Batching;
import perkilo.model.ProductKind;
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
                kind(row),
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

    private static ProductKind kind(TableRow row) {
        Set<ProductKind.Word> words = EnumSet.noneOf(ProductKind.Word.class);
        String cell = row.text(BatchesSheet.KIND);
        for (String part : ProductKind.parts(cell)) {
            Optional<ProductKind.Word> word = ProductKind.Word.named(part);
            if (word.isEmpty()) {
                row.findings().error(row.origin(BatchesSheet.KIND), FormulaMessages.kind(part, ProductKind.WORDS));
                return ProductKind.LEAVE_ON;
            }
            words.add(word.get());
        }
        if (words.contains(ProductKind.Word.LEAVE_ON) && words.contains(ProductKind.Word.RINSE_OFF)) {
            row.findings().error(row.origin(BatchesSheet.KIND), FormulaMessages.bothKinds(cell));
        }
        return ProductKind.of(words);
    }
}
