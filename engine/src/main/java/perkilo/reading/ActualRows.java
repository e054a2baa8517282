package perkilo.reading;

import java.util.ArrayList;
import java.util.List;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.model.ActualRow;
import perkilo.origin.Day;
import perkilo.origin.Figure;
import perkilo.origin.Finding;
import perkilo.reading.table.Amount;
import perkilo.reading.table.CellMessages;
import perkilo.reading.table.CurrencySign;
import perkilo.reading.table.Findings;
import perkilo.reading.table.TableRow;
import perkilo.schema.ActualsSheet;
import perkilo.units.Measure;

/** Reads what runs really took. */
final class ActualRows {

    private final Tables tables;
    private final Findings findings;

    ActualRows(Tables tables, Findings findings) {
        this.tables = tables;
        this.findings = findings;
    }

    /** The rows, those with an error too. */
    List<ActualRow> rows() {
        List<ActualRow> rows = new ArrayList<>();
        if (tables.of(ActualsSheet.SCHEMA).isEmpty()) {
            return rows;
        }
        for (TableRow row : tables.rows(ActualsSheet.SCHEMA, findings)) {
            long before = errors();
            ActualRow.Use use = row.isBlank(ActualsSheet.ITEM) ? nothing(row) : use(row);
            Figure planned = row.figure(ActualsSheet.PLANNED);
            Figure made = row.figure(ActualsSheet.MADE);
            Figure hours = row.figure(ActualsSheet.HOURS);
            rows.add(new ActualRow(
                    row.text(ActualsSheet.RUN),
                    row.text(ActualsSheet.PRODUCT),
                    planned,
                    use,
                    made,
                    hours,
                    errors() > before,
                    row.origin(ActualsSheet.PRODUCT)));
        }
        return rows;
    }

    private long errors() {
        return findings.list().stream().filter(Finding::isError).count();
    }

    /** A row without an item must not have a quantity or an amount. */
    private ActualRow.@Nullable Use nothing(TableRow row) {
        if (!row.isBlank(ActualsSheet.QUANTITY_OF) || !row.isBlank(ActualsSheet.PAID)) {
            findings.error(row.origin(ActualsSheet.ITEM), PlanMessages.actualOfNothing());
        }
        return null;
    }

    private ActualRow.@Nullable Use use(TableRow row) {
        row.require(ActualsSheet.QUANTITY_OF);
        Amount quantity = row.amount(ActualsSheet.QUANTITY_OF);
        Measure unit = QuantityCells.unit(row, ActualsSheet.UNIT_OF, ActualsSheet.QUANTITY_OF, quantity);
        Amount paid = row.amount(ActualsSheet.PAID);
        CurrencyUnit currency = currency(row, paid);
        Day day = row.day(ActualsSheet.DATE_OF);
        if (quantity == null || unit == null) {
            return null;
        }
        Figure used = QuantityCells.in(row, ActualsSheet.UNIT_OF, quantity, unit);
        return new ActualRow.Use(
                row.text(ActualsSheet.ITEM),
                used,
                unit,
                paid == null ? null : paid.figure(),
                currency,
                day,
                row.origin(ActualsSheet.ITEM));
    }

    /** The currency of an amount: from its own column, else the sign beside it; null for the home currency. */
    private @Nullable CurrencyUnit currency(TableRow row, @Nullable Amount paid) {
        CurrencySign typed = row.currency(ActualsSheet.CURRENCY_OF);
        CurrencySign sign =
                typed != null || paid == null ? typed : paid.currency().orElse(null);
        if (sign == null) {
            return null;
        }
        if (!sign.isClear()) {
            findings.error(
                    row.origin(typed == null ? ActualsSheet.PAID : ActualsSheet.CURRENCY_OF),
                    CellMessages.sharedSign(
                            ActualsSheet.CURRENCY_OF.header(),
                            sign.text(),
                            sign.meanings().get(0).getCurrencyCode()));
        }
        return sign.meanings().get(0);
    }
}
