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

/** Suppliers: by their rows, and those who have none by their offers. */
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

    /** All suppliers, by {@link Names#key}. */
    Map<String, Supplier> suppliers(List<Offer> offers) {
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
                        "%s has no row in Suppliers and offers in %s and %s; taken to invoice in %s. Give him a row with his Currency"
                                .formatted(known.name(), known.currency(), offer.currency(), known.currency()));
            }
        }
        return suppliers;
    }

    /** What a supplier invoices in: by his row, else what all his offers are in; empty if he has neither. */
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
                    row.row().origin(SuppliersSheet.CURRENCY_OF_INVOICE),
                    "it is not clear which currency %s invoices in; fill Currency with a code such as EUR"
                            .formatted(row.name()));
        }
        return possible.stream().findFirst();
    }
}
