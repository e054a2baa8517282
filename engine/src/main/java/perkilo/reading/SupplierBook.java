package perkilo.reading;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import javax.money.CurrencyUnit;
import perkilo.model.Supplier;
import perkilo.names.Names;
import perkilo.offers.Offer;
import perkilo.reading.table.CurrencySign;
import perkilo.reading.table.Findings;
import perkilo.reading.table.TableRow;
import perkilo.schema.SuppliersSheet;

/** The suppliers of a book, from their rows, or from their offers if they have no row. */
final class SupplierBook {

    private final Map<String, SupplierRow> rows;
    private final Findings findings;

    SupplierBook(Tables tables, Findings findings) {
        this.findings = findings;
        NamedThings<SupplierRow> suppliers = new NamedThings<>("supplier", findings);
        for (TableRow row : tables.rows(SuppliersSheet.SCHEMA, findings)) {
            SupplierRow supplier = SupplierRow.of(row);
            suppliers.add(supplier.name(), supplier.origin(), supplier);
            SuspectedFractions.warn(row);
        }
        this.rows = suppliers.byKey();
    }

    /** The rows, by {@link Names#key}. */
    Map<String, SupplierRow> rows() {
        return rows;
    }

    /**
     * All suppliers, by {@link Names#key}.
     *
     * @param charges what the rows of offers say about them
     */
    Map<String, Supplier> suppliers(List<Offer> offers, ChargesOnOffers charges) {
        Map<String, Set<CurrencyUnit>> currencies = new TreeMap<>();
        for (Offer offer : offers) {
            currencies
                    .computeIfAbsent(Names.key(offer.supplier()), key -> new LinkedHashSet<>())
                    .add(offer.currency());
        }
        Map<String, Supplier> suppliers = new LinkedHashMap<>();
        Set<String> unclear = new HashSet<>();
        rows.forEach((key, row) -> invoicedIn(row, currencies.getOrDefault(key, Set.of()))
                .ifPresent(currency -> suppliers.put(key, row.supplier(currency))));
        for (Offer offer : offers) {
            String key = Names.key(offer.supplier());
            Supplier known = suppliers.get(key);
            if (known == null) {
                suppliers.put(key, Supplier.of(offer.supplier(), offer.currency()));
            } else if (!rows.containsKey(key) && !known.currency().equals(offer.currency()) && unclear.add(key)) {
                findings.warning(
                        offer.origin(),
                        SupplierMessages.severalCurrencies(
                                known.name(),
                                known.currency().getCurrencyCode(),
                                offer.currency().getCurrencyCode()));
            }
        }
        suppliers.replaceAll((key, supplier) -> charges.added(supplier, key, rows.get(key)));
        return suppliers;
    }

    /**
     * The currency that a supplier invoices in: from their row, else that of all their offers; empty if they have
     * neither.
     */
    private Optional<CurrencyUnit> invoicedIn(SupplierRow row, Set<CurrencyUnit> ofOffers) {
        CurrencySign sign = row.sign();
        if (row.currency().isPresent() || (row.namesCurrency() && sign == null)) {
            return row.currency();
        }
        Set<CurrencyUnit> possible = new LinkedHashSet<>(ofOffers);
        if (sign != null) {
            possible.removeIf(currency -> !sign.canMean(currency));
        }
        if (possible.size() != 1 && (sign != null || !ofOffers.isEmpty())) {
            findings.error(
                    row.row().origin(SuppliersSheet.CURRENCY_OF_INVOICE), SupplierMessages.unclearCurrency(row.name()));
        }
        return possible.stream().findFirst();
    }
}
