package perkilo.reading;

import java.util.List;
import java.util.Optional;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.model.DeliveryTerm;
import perkilo.model.Supplier;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.reading.table.CurrencySign;
import perkilo.reading.table.TableRow;
import perkilo.schema.SuppliersSheet;

/**
 * A supplier's row, whose currency may have to come from his offers.
 *
 * @param name as typed
 * @param row where the rest stands
 * @param sign what the currency column says; null where it is blank or was reported
 */
record SupplierRow(String name, TableRow row, @Nullable CurrencySign sign) {

    static SupplierRow of(TableRow row) {
        return new SupplierRow(
                row.text(SuppliersSheet.SUPPLIER), row, row.currency(SuppliersSheet.CURRENCY_OF_INVOICE));
    }

    Origin origin() {
        return row.origin(SuppliersSheet.SUPPLIER);
    }

    /** Whether the row names a currency, be it wrongly. */
    boolean namesCurrency() {
        return !row.isBlank(SuppliersSheet.CURRENCY_OF_INVOICE);
    }

    /** The currency, if the row settles it; a dollar sign alone is settled only by the offers. */
    Optional<CurrencyUnit> currency() {
        return sign != null && sign.isClear() ? Optional.of(sign.meanings().get(0)) : Optional.empty();
    }

    /** The supplier, with all amounts in a currency. */
    Supplier supplier(CurrencyUnit currency) {
        return new Supplier(
                name,
                currency,
                terms(),
                Amounts.in(row, SuppliersSheet.MINIMUM_ORDER_VALUE, currency),
                Amounts.in(row, SuppliersSheet.SMALL_ORDER_CHARGE, currency),
                Amounts.in(row, SuppliersSheet.FREIGHT_PER_ORDER, currency, Figure.ZERO),
                Amounts.in(row, SuppliersSheet.FREIGHT_PER_KG, currency, Figure.ZERO),
                row.figure(SuppliersSheet.INSURANCE, Figure.ZERO),
                row.figure(SuppliersSheet.DUTY, Figure.ZERO),
                row.figure(SuppliersSheet.LEAD_TIME),
                origin());
    }

    private @Nullable DeliveryTerm terms() {
        String text = row.text(SuppliersSheet.TERMS);
        if (text.isEmpty()) {
            return null;
        }
        DeliveryTerm term = DeliveryTerm.parse(text).orElse(null);
        if (term == null) {
            row.findings()
                    .error(
                            row.origin(SuppliersSheet.TERMS),
                            "Terms is \"%s\", which is not a delivery term; expected one of %s"
                                    .formatted(text, words()));
        }
        return term;
    }

    private static String words() {
        return String.join(
                ", ", List.of(DeliveryTerm.values()).stream().map(Enum::name).toList());
    }
}
