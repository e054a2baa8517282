package perkilo.reading;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import perkilo.model.Book;
import perkilo.names.Names;
import perkilo.names.Spelling;
import perkilo.offers.Offer;
import perkilo.reading.table.Findings;
import perkilo.schema.InputColumn;
import perkilo.schema.OffersSheet;
import perkilo.schema.SuppliersSheet;

/** Reports suppliers of offers that have no row in Suppliers, so that their charges are unknown. */
final class UnknownSuppliers {

    private final Book book;
    private final Tables tables;
    private final Findings findings;

    UnknownSuppliers(Book book, Tables tables, Findings findings) {
        this.book = book;
        this.tables = tables;
        this.findings = findings;
    }

    void run() {
        if (tables.of(SuppliersSheet.SCHEMA).isEmpty()) {
            return;
        }
        List<String> known = tables.stream(SuppliersSheet.SCHEMA, new Findings())
                .map(row -> row.text(SuppliersSheet.SUPPLIER))
                .toList();
        Set<String> keys = new HashSet<>();
        known.forEach(name -> keys.add(Names.key(name)));
        Map<String, Set<InputColumn>> said = null;
        for (Offer offer : book.offers()) {
            String key = Names.key(offer.supplier());
            if (keys.add(key)) {
                said = said == null ? saidOnOffers() : said;
                Set<InputColumn> ofThem = said.getOrDefault(key, Set.of());
                List<String> unknown = OffersSheet.OF_SUPPLIER.stream()
                        .filter(column -> !ofThem.contains(column))
                        .map(InputColumn::header)
                        .toList();
                String meant = Spelling.nearest(offer.supplier(), known).orElse("");
                if (!unknown.isEmpty() || !meant.isEmpty()) {
                    findings.warning(
                            offer.origin(),
                            ofThem.isEmpty()
                                    ? NameMessages.unknownSupplier(offer.supplier(), meant)
                                    : NameMessages.partlyKnownSupplier(offer.supplier(), meant, unknown));
                }
            }
        }
    }

    /** The terms and charges that the rows of offers say, by the keys of their suppliers. */
    private Map<String, Set<InputColumn>> saidOnOffers() {
        Map<String, Set<InputColumn>> said = new HashMap<>();
        boolean any = tables.of(OffersSheet.SCHEMA).stream()
                .anyMatch(table -> OffersSheet.OF_SUPPLIER.stream().anyMatch(table::has));
        if (any) {
            tables.stream(OffersSheet.SCHEMA, new Findings()).forEach(row -> {
                Set<InputColumn> ofThem =
                        said.computeIfAbsent(Names.key(row.text(OffersSheet.SUPPLIER)), key -> new HashSet<>());
                OffersSheet.OF_SUPPLIER.stream()
                        .filter(column -> row.table().has(column) && !row.isBlank(column))
                        .forEach(ofThem::add);
            });
        }
        return said;
    }
}
