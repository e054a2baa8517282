package perkilo.reading;

import java.math.BigDecimal;
import java.util.Set;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.reading.table.Amount;
import perkilo.reading.table.CurrencySign;
import perkilo.reading.table.TableRow;
import perkilo.schema.Column;
import perkilo.schema.MaterialsSheet;
import perkilo.schema.SettingsSheet;
import perkilo.schema.SuppliersSheet;
import perkilo.units.Measure;

/** Amounts of money whose currency is known from elsewhere: a sign beside them must not say otherwise. */
final class Amounts {

    private static final Set<Column> PER_KG =
            Set.of(MaterialsSheet.HOUSE_PRICE, SuppliersSheet.FREIGHT_PER_KG, SettingsSheet.PROCESS_WATER);

    private Amounts() {}

    /**
     * An amount in a currency.
     *
     * @param expected what it must be in; null where that is not known, and then nothing is compared
     * @return null where the cell is blank or was reported
     */
    static @Nullable Figure in(TableRow row, Column column, @Nullable CurrencyUnit expected) {
        Amount amount = row.amount(column);
        if (amount != null) {
            checkBasis(row, column, amount);
        }
        if (amount == null || expected == null) {
            return amount == null ? null : amount.figure();
        }
        CurrencySign sign = amount.currency().orElse(null);
        if (sign != null && !sign.canMean(expected)) {
            Origin origin = row.origin(column);
            String what = "%s is in %s, but %s is expected here".formatted(column.header(), sign.text(), expected);
            if (sign.equals(amount.format())) {
                row.findings().warning(origin, what + "; the number format is ignored");
            } else {
                row.findings().error(origin, what);
            }
        }
        return amount.figure();
    }

    /** Reports an amount that is said to be for something else than what the column asks for. */
    private static void checkBasis(TableRow row, Column column, Amount amount) {
        boolean perKg = PER_KG.contains(column);
        boolean other = amount.measure()
                        .map(said -> perKg ? said != Measure.KG : !said.isCount() || !said.isBase())
                        .orElse(perKg && amount.perPack())
                || amount.count().compareTo(BigDecimal.ONE) != 0;
        if (other) {
            row.findings()
                    .error(
                            row.origin(column),
                            "%s is per %s; expected an amount%s"
                                    .formatted(column.header(), amount.per(), perKg ? " per kg" : ""));
        }
    }

    /** An amount in a currency, or what holds where the cell is blank. */
    static Figure in(TableRow row, Column column, @Nullable CurrencyUnit expected, Figure byDefault) {
        Figure figure = in(row, column, expected);
        return figure == null ? row.standIn(column, byDefault) : figure;
    }
}
