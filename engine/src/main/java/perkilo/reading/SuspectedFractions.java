package perkilo.reading;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.reading.table.TableRow;
import perkilo.schema.Column;
import perkilo.schema.OffersSheet;
import perkilo.schema.ProductsSheet;
import perkilo.schema.SettingsSheet;
import perkilo.schema.SuppliersSheet;

/**
 * Rates in plain cells that are hardly meant, as they are so low: somebody typed 0.55 for 55 %.
 *
 * <p>Columns whose ordinary rates reach down to where fractions of them begin are left out, as nothing tells the two
 * apart: insurance, handling loss, fill loss, pieces spoiled, active matter, use levels and legal limits.
 */
final class SuspectedFractions {

    /**
     * Below which per cent a rate is suspicious (common practice, no source). Margins, taxes, duty, overhead and
     * credits are one per cent or more, where there are any. An overfill and a bank's margin of half a per cent are
     * ordinary: there it takes less than a tenth of one, which is finer than a filler is set and cheaper than banks
     * are, while as fractions of what is ordinary they are all below that tenth, which would be 10 %.
     */
    private static final Map<Column, BigDecimal> BELOW = below();

    private SuspectedFractions() {}

    private static Map<Column, BigDecimal> below() {
        Map<Column, BigDecimal> below = new HashMap<>();
        BigDecimal tenth = new BigDecimal("0.1");
        for (Column whole : new Column[] {
            ProductsSheet.TARGET_MARGIN,
            ProductsSheet.RETAILER_MARGIN,
            ProductsSheet.VAT,
            ProductsSheet.NATURAL_ORIGIN_TARGET,
            SuppliersSheet.DUTY,
            OffersSheet.DUTY,
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

    /** Warns of the rates of a row that are suspicious. */
    static void warn(TableRow row) {
        for (Column column : row.table().columns().keySet()) {
            if (BELOW.containsKey(column)) {
                in(row, column, row.figure(column))
                        .ifPresent(text -> row.findings().warning(row.origin(column), text));
            }
        }
    }

    /**
     * What is to be said of a rate; empty if it is not suspicious.
     *
     * @param rate as it was read; null where it is blank or was reported
     */
    static Optional<String> in(TableRow row, Column column, @Nullable Figure rate) {
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
        return Optional.of("%s is %s, which means %s %%; type %s for %s %%, or format the cell as a percentage"
                .formatted(column.header(), read, read, meant, meant));
    }
}
