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
import perkilo.schema.InputColumn;
import perkilo.schema.MaterialsSheet;
import perkilo.schema.OffersSheet;
import perkilo.schema.SettingsSheet;
import perkilo.schema.SuppliersSheet;
import perkilo.units.Currencies;
import perkilo.units.Measure;

/** Amounts of money in a known currency; a sign beside them must agree with it. */
final class Amounts {

    private static final Set<InputColumn> PER_KG = Set.of(
            MaterialsSheet.HOUSE_PRICE,
            SuppliersSheet.FREIGHT_PER_KG,
            OffersSheet.FREIGHT_PER_KG,
            SettingsSheet.PROCESS_WATER);

    private Amounts() {}

    /**
     * An amount in a currency.
     *
     * @param expected the currency that it must be in; null if unknown, and then nothing is compared
     * @return null where the cell is blank or was reported
     */
    static @Nullable Figure in(TableRow row, InputColumn column, @Nullable CurrencyUnit expected) {
        Amount amount = row.amount(column);
        if (amount != null) {
            checkBasis(row, column, amount);
        }
        if (amount == null || expected == null || Currencies.isUnknown(expected)) {
            return amount == null ? null : amount.figure();
        }
        CurrencySign sign = amount.currency().orElse(null);
        if (sign != null && !sign.canMean(expected)) {
            Origin origin = row.origin(column);
            String code = expected.getCurrencyCode();
            if (sign.equals(amount.format())) {
                row.findings().warning(origin, QuantityMessages.otherFormat(column.header(), sign.text(), code));
            } else {
                row.findings().error(origin, QuantityMessages.otherCurrency(column.header(), sign.text(), code));
            }
        }
        return amount.figure();
    }

    /** Reports an amount that is per another unit than its column asks for. */
    private static void checkBasis(TableRow row, InputColumn column, Amount amount) {
        boolean perKg = PER_KG.contains(column);
        boolean other = amount.measure()
                        .map(said -> perKg ? said != Measure.KG : !said.isCount() || !said.isBase())
                        .orElse(perKg && amount.perPack())
                || amount.count().compareTo(BigDecimal.ONE) != 0;
        if (other) {
            row.findings()
                    .error(
                            row.origin(column),
                            perKg
                                    ? QuantityMessages.notPerKg(column.header(), amount.per())
                                    : QuantityMessages.per(column.header(), amount.per()));
        }
    }

    /** An amount in a currency, or the default if the cell is blank. */
    static Figure in(TableRow row, InputColumn column, @Nullable CurrencyUnit expected, Figure byDefault) {
        Figure figure = in(row, column, expected);
        return figure == null ? row.standIn(column, byDefault) : figure;
    }
}
