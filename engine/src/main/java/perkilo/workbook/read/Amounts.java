package perkilo.workbook.read;

import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.workbook.read.table.Amount;
import perkilo.workbook.read.table.CurrencySign;
import perkilo.workbook.read.table.TableRow;
import perkilo.workbook.schema.Column;

/** Amounts of money whose currency is known from elsewhere: a sign beside them must not say otherwise. */
final class Amounts {

    private Amounts() {}

    /**
     * An amount in a currency.
     *
     * @param expected what it must be in; null where that is not known, and then nothing is compared
     * @return null where the cell is blank or was reported
     */
    static @Nullable Figure in(TableRow row, Column column, @Nullable CurrencyUnit expected) {
        Amount amount = row.amount(column);
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

    /** An amount in a currency, or what holds where the cell is blank. */
    static Figure in(TableRow row, Column column, @Nullable CurrencyUnit expected, Figure byDefault) {
        Figure figure = in(row, column, expected);
        return figure == null ? row.standIn(column, byDefault) : figure;
    }
}
