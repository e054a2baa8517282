package perkilo.reading;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.reading.table.TableRow;
import perkilo.schema.InputColumn;
import perkilo.schema.OffersSheet;
import perkilo.schema.ProductsSheet;
import perkilo.schema.SettingsSheet;
import perkilo.schema.SuppliersSheet;

/**
 * Finds percentages in plain cells that are too low to be meant: 0.55 typed for 55 %.
 *
 * <p>Columns whose usual percentages are as low as fractions are left out, because the two cannot be distinguished:
 * insurance, handling loss, fill loss, pieces spoiled, active matter, use levels and legal limits.
 */
final class SuspectedFractions {

    /**
     * The percentage below which a rate is suspicious (common practice, no source). Margins, taxes, duty, overhead and
     * credits are 1 % or more, if there are any. An overfill or a bank's margin of 0.5 % is usual, so there the limit
     * is 0.1 %: fillers are not set finer and banks are not cheaper, and the usual rates typed as fractions are all
     * below it, because 0.1 as a fraction is 10 %.
     */
    private static final Map<InputColumn, BigDecimal> BELOW = below();

    private SuspectedFractions() {}

    private static Map<InputColumn, BigDecimal> below() {
        Map<InputColumn, BigDecimal> below = new HashMap<>();
        BigDecimal tenth = new BigDecimal("0.1");
        for (InputColumn whole : new InputColumn[] {
            ProductsSheet.TARGET_MARGIN,
            ProductsSheet.DISTRIBUTOR_MARGIN,
            ProductsSheet.RETAILER_MARGIN,
            ProductsSheet.VAT,
            ProductsSheet.NATURAL_ORIGIN_TARGET,
            SuppliersSheet.DUTY,
            SuppliersSheet.PREPAID,
            OffersSheet.DUTY,
            OffersSheet.DISCOUNT,
            OffersSheet.SURCHARGE,
            SettingsSheet.OVERHEAD,
            SettingsSheet.HOLDING,
            SettingsSheet.LEFTOVER_CREDIT
        }) {
            below.put(whole, BigDecimal.ONE);
        }
        below.put(ProductsSheet.OVERFILL, tenth);
        below.put(SettingsSheet.CONVERSION_MARGIN, tenth);
        return below;
    }

    /** Warns of each suspicious rate of a row. */
    static void warn(TableRow row) {
        for (InputColumn column : row.table().columns().keySet()) {
            if (BELOW.containsKey(column)) {
                in(row, column, row.figure(column))
                        .ifPresent(text -> row.findings().warning(row.origin(column), text));
            }
        }
    }

    /**
     * The message about a rate; empty if it is not suspicious.
     *
     * @param rate as it was read; null where it is blank or was reported
     */
    static Optional<String> in(TableRow row, InputColumn column, @Nullable Figure rate) {
        BigDecimal limit = BELOW.get(column);
        if (rate == null || limit == null || !row.isBareNumber(column)) {
            return Optional.empty();
        }
        BigDecimal typed = rate.value().movePointRight(2);
        if (typed.signum() <= 0 || typed.compareTo(limit) >= 0) {
            return Optional.empty();
        }
        String read = Percents.words(rate.value());
        String meant = Percents.words(typed);
        return Optional.of(QuantityMessages.fraction(column.header(), read, meant));
    }
}
