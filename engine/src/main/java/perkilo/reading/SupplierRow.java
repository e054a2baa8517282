package perkilo.reading;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.model.DeliveryTerm;
import perkilo.model.Supplier;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.reading.table.CurrencySign;
import perkilo.reading.table.TableRow;
import perkilo.schema.InputColumn;
import perkilo.schema.SuppliersSheet;

/**
 * A supplier's row, whose currency may have to come from their offers.
 *
 * @param name as typed
 * @param row the row
 * @param sign the text of the currency column; null if it is blank or was reported
 */
record SupplierRow(String name, TableRow row, @Nullable CurrencySign sign) {

    static SupplierRow of(TableRow row) {
        return new SupplierRow(
                row.text(SuppliersSheet.SUPPLIER), row, row.currency(SuppliersSheet.CURRENCY_OF_INVOICE));
    }

    Origin origin() {
        return row.origin(SuppliersSheet.SUPPLIER);
    }

    /** Whether the row names a currency, even if wrongly. */
    boolean namesCurrency() {
        return !row.isBlank(SuppliersSheet.CURRENCY_OF_INVOICE);
    }

    /** The currency, if the row makes it clear; a dollar sign alone is decided by the offers. */
    Optional<CurrencyUnit> currency() {
        return sign != null && sign.isClear() ? Optional.of(sign.meanings().get(0)) : Optional.empty();
    }

    /** The supplier, with all amounts in a currency. */
    Supplier supplier(CurrencyUnit currency) {
        return new Supplier(
                name,
                currency,
                terms(row, SuppliersSheet.TERMS),
                new Supplier.Minimum(
                        Amounts.in(row, SuppliersSheet.MINIMUM_ORDER_VALUE, currency),
                        Amounts.in(row, SuppliersSheet.SMALL_ORDER_CHARGE, currency)),
                new Supplier.Charges(
                        Amounts.in(row, SuppliersSheet.FREIGHT_PER_ORDER, currency, Figure.ZERO),
                        Amounts.in(row, SuppliersSheet.FREIGHT_PER_KG, currency, Figure.ZERO),
                        row.figure(SuppliersSheet.INSURANCE, Figure.ZERO),
                        row.figure(SuppliersSheet.DUTY, Figure.ZERO)),
                row.figure(SuppliersSheet.LEAD_TIME),
                new Supplier.Payment(
                        row.lines(SuppliersSheet.PAYMENT_TERMS),
                        row.figure(SuppliersSheet.PAYMENT_DAYS),
                        row.figure(SuppliersSheet.PREPAID)),
                new Supplier.Details(
                        row.text(SuppliersSheet.TERMS),
                        row.lines(SuppliersSheet.ADDRESS),
                        row.text(SuppliersSheet.CONTACT),
                        row.text(SuppliersSheet.EMAIL),
                        row.text(SuppliersSheet.OUR_NUMBER)),
                origin());
    }

    /** The delivery term in a column of a row; null where it is blank or was reported. */
    static @Nullable DeliveryTerm terms(TableRow row, InputColumn column) {
        String text = row.text(column);
        if (text.isEmpty()) {
            return null;
        }
        DeliveryTerm term = DeliveryTerm.parse(text).orElse(null);
        if (term == null) {
            List<String> terms =
                    Stream.of(DeliveryTerm.values()).map(Enum::name).toList();
            row.findings().error(row.origin(column), SupplierMessages.notATerm(text, terms));
        }
        return term;
    }
}
