package perkilo.reading;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.model.DeliveryTerm;
import perkilo.model.Supplier;
import perkilo.names.Names;
import perkilo.origin.Figure;
import perkilo.reading.table.Findings;
import perkilo.reading.table.FoundTable;
import perkilo.reading.table.TableRow;
import perkilo.schema.InputColumn;
import perkilo.schema.OffersSheet;
import perkilo.schema.SuppliersSheet;
import perkilo.xlsx.grid.Cell;

/**
 * Charges and terms of suppliers that are typed in the rows of their offers, such as a freight per order. All rows of a
 * supplier must agree; then the value is the supplier's.
 */
final class ChargesOnOffers {

    private static final Map<InputColumn, InputColumn> OF_SUPPLIERS = Map.of(
            OffersSheet.TERMS, SuppliersSheet.TERMS,
            OffersSheet.MINIMUM_ORDER_VALUE, SuppliersSheet.MINIMUM_ORDER_VALUE,
            OffersSheet.SMALL_ORDER_CHARGE, SuppliersSheet.SMALL_ORDER_CHARGE,
            OffersSheet.FREIGHT_PER_ORDER, SuppliersSheet.FREIGHT_PER_ORDER,
            OffersSheet.FREIGHT_PER_KG, SuppliersSheet.FREIGHT_PER_KG,
            OffersSheet.INSURANCE, SuppliersSheet.INSURANCE,
            OffersSheet.LEAD_TIME, SuppliersSheet.LEAD_TIME);

    private final Findings findings;
    private final Map<FoundTable, List<InputColumn>> columns = new HashMap<>();
    private final Map<String, Map<InputColumn, Typed>> bySupplier = new LinkedHashMap<>();
    private @Nullable FoundTable lastTable;
    private List<InputColumn> lastColumns = List.of();

    /** What the rows of a supplier say in one column. */
    private static final class Typed {

        private @Nullable TableRow first;
        private boolean contradicted;
        private @Nullable TableRow blank;
    }

    ChargesOnOffers(Findings findings) {
        this.findings = findings;
    }

    /** Notes what a row of offers says about its supplier. */
    void note(TableRow row) {
        if (!row.table().equals(lastTable)) {
            lastTable = row.table();
            lastColumns = columns.computeIfAbsent(
                    row.table(),
                    table -> OffersSheet.OF_SUPPLIER.stream().filter(table::has).toList());
        }
        if (lastColumns.isEmpty()) {
            return;
        }
        Map<InputColumn, Typed> known =
                bySupplier.computeIfAbsent(Names.key(row.text(OffersSheet.SUPPLIER)), any -> new LinkedHashMap<>());
        for (InputColumn column : lastColumns) {
            note(row, column, known.computeIfAbsent(column, any -> new Typed()));
        }
    }

    private void note(TableRow row, InputColumn column, Typed typed) {
        if (row.isBlank(column)) {
            typed.blank = row;
            return;
        }
        TableRow first = typed.first;
        if (first == null) {
            typed.first = row;
        } else if (!typed.contradicted && !same(first.cell(column), row.cell(column))) {
            typed.contradicted = true;
            findings.error(
                    row.origin(column),
                    SupplierMessages.rowsDisagree(
                            column.header(),
                            row.text(OffersSheet.SUPPLIER),
                            row.cell(column).text(),
                            first.cell(column).text(),
                            first.origin(column).where()));
        }
    }

    private static boolean same(Cell one, Cell other) {
        var number = one.number();
        var second = other.number();
        if (number == null || second == null) {
            return one.text().equals(other.text());
        }
        return number.compareTo(second) == 0 && one.isPercentFormat() == other.isPercentFormat();
    }

    /**
     * A supplier with what their offers say.
     *
     * @param key of the supplier's name
     * @param row the supplier's own row; null if there is none
     */
    Supplier added(Supplier supplier, String key, @Nullable SupplierRow row) {
        Map<InputColumn, Typed> known = bySupplier.get(key);
        if (known == null) {
            return supplier;
        }
        Map<InputColumn, TableRow> used = new HashMap<>();
        known.forEach((column, typed) -> {
            TableRow first = typed.first;
            if (first != null && !typed.contradicted && counts(supplier.name(), column, typed, first, row)) {
                used.put(column, first);
            }
        });
        return used.isEmpty() ? supplier : with(supplier, used);
    }

    /** Whether the value on the offers counts, with what is doubtful about it reported. */
    private boolean counts(
            String name, InputColumn column, Typed typed, TableRow first, @Nullable SupplierRow supplier) {
        InputColumn own = OF_SUPPLIERS.getOrDefault(column, column);
        TableRow ownRow = supplier == null ? null : supplier.row();
        boolean typedTwice = ownRow != null && !ownRow.isBlank(own);
        if (ownRow != null && typedTwice) {
            if (same(ownRow.cell(own), first.cell(column))) {
                return false;
            }
            String where = ownRow.origin(own).where();
            String other = ownRow.cell(own).text();
            String value = first.cell(column).text();
            if (typed.blank != null) {
                findings.error(
                        first.origin(column),
                        SupplierMessages.offersAndSupplierDisagree(column.header(), name, value, other, where));
                return false;
            }
            findings.warning(
                    first.origin(column), SupplierMessages.offersWin(column.header(), name, value, other, where));
            return true;
        }
        if (typed.blank != null) {
            findings.warning(
                    typed.blank.origin(column),
                    SupplierMessages.onSomeRows(
                            column.header(),
                            name,
                            first.cell(column).text(),
                            first.origin(column).where()));
        }
        return true;
    }

    private Supplier with(Supplier supplier, Map<InputColumn, TableRow> used) {
        CurrencyUnit currency = supplier.currency();
        Supplier.Charges charges = supplier.charges();
        TableRow terms = used.get(OffersSheet.TERMS);
        DeliveryTerm term = terms == null ? supplier.terms() : SupplierRow.terms(terms, OffersSheet.TERMS);
        return new Supplier(
                supplier.name(),
                currency,
                term,
                new Supplier.Minimum(
                        amount(used, OffersSheet.MINIMUM_ORDER_VALUE, currency, supplier.minimumOrderValue()),
                        amount(used, OffersSheet.SMALL_ORDER_CHARGE, currency, supplier.smallOrderCharge())),
                new Supplier.Charges(
                        sure(amount(used, OffersSheet.FREIGHT_PER_ORDER, currency, charges.freightPerOrder())),
                        sure(amount(used, OffersSheet.FREIGHT_PER_KG, currency, charges.freightPerKg())),
                        sure(figure(used, OffersSheet.INSURANCE, charges.insurance())),
                        charges.duty()),
                figure(used, OffersSheet.LEAD_TIME, supplier.leadTimeDays()),
                supplier.payment(),
                terms == null
                        ? supplier.details()
                        : supplier.details().withDeliveryTerms(terms.text(OffersSheet.TERMS)),
                supplier.origin());
    }

    private static Figure sure(@Nullable Figure figure) {
        return figure == null ? Figure.ZERO : figure;
    }

    private static @Nullable Figure amount(
            Map<InputColumn, TableRow> used, InputColumn column, CurrencyUnit currency, @Nullable Figure otherwise) {
        TableRow row = used.get(column);
        return row == null ? otherwise : constantIfShared(Amounts.in(row, column, currency));
    }

    private static @Nullable Figure figure(
            Map<InputColumn, TableRow> used, InputColumn column, @Nullable Figure otherwise) {
        TableRow row = used.get(column);
        return row == null ? otherwise : constantIfShared(row.figure(column));
    }

    /** The figure of several cells: no formula refers to one of them alone. */
    private static @Nullable Figure constantIfShared(@Nullable Figure figure) {
        return figure == null ? null : figure.asConstant();
    }
}
