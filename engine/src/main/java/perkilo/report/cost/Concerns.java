package perkilo.report.cost;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import perkilo.costing.CostOutcome;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.model.Product;
import perkilo.model.Run;
import perkilo.names.Names;
import perkilo.offers.Offer;
import perkilo.origin.Finding;
import perkilo.origin.Level;
import perkilo.origin.Origin;

/**
 * Which errors and warnings concern which product: those in a row that it depends on. What is in no row of any product
 * concerns the whole workbook.
 */
final class Concerns {

    private final Book book;
    private final Map<String, Set<String>> byProduct = new HashMap<>();
    private final Set<String> ofAny = new HashSet<>();
    private final List<Finding> findings;

    Concerns(CostOutcome.Costed costed, List<Finding> findings) {
        this.book = costed.book();
        this.findings = findings.stream()
                .filter(finding -> finding.level() != Level.NOTE)
                .toList();
        for (Product product : book.products().values()) {
            Set<String> rows = rows(product);
            byProduct.put(Names.key(product.name()), rows);
            ofAny.addAll(rows);
        }
    }

    /** What concerns a product. */
    List<Finding> of(Product product) {
        Set<String> rows = byProduct.getOrDefault(Names.key(product.name()), Set.of());
        return findings.stream()
                .filter(finding -> rows.contains(row(finding.origin())))
                .toList();
    }

    /** What concerns the whole workbook. */
    List<Finding> ofAll() {
        return findings.stream()
                .filter(finding -> !ofAny.contains(row(finding.origin())))
                .toList();
    }

    private Set<String> rows(Product product) {
        Set<String> rows = new HashSet<>();
        Set<String> items = new HashSet<>();
        rows.add(row(product.origin()));
        for (Product.Component part : product.components()) {
            rows.add(row(part.origin()));
            items.add(Names.key(part.name()));
        }
        for (Run run : book.runs()) {
            if (run instanceof Run.OfProduct one && Names.key(one.product()).equals(Names.key(product.name()))) {
                rows.add(row(run.origin()));
            }
        }
        book.formula(product.formula()).ifPresent(formula -> addRows(formula, rows, items));
        for (String item : items) {
            Material material = book.materials().get(item);
            if (material != null) {
                rows.add(row(material.origin()));
            }
        }
        for (Offer offer : book.offers()) {
            if (items.contains(Names.key(offer.item()))) {
                rows.add(row(offer.origin()));
                offer.breaks().forEach(one -> rows.add(row(one.origin())));
                book.supplier(offer.supplier()).ifPresent(supplier -> rows.add(row(supplier.origin())));
            }
        }
        rows.remove(row(Origin.NONE));
        return rows;
    }

    private static void addRows(Formula formula, Set<String> rows, Set<String> items) {
        rows.add(row(formula.origin()));
        rows.add(row(formula.batching().origin()));
        for (Formula.Line line : formula.lines()) {
            rows.add(row(line.origin()));
            items.add(Names.key(line.material()));
        }
    }

    /** The row of a place, in all its columns. */
    private static String row(Origin place) {
        String cell = place.cell();
        int at = cell.length();
        while (at > 0 && Character.isDigit(cell.charAt(at - 1))) {
            at--;
        }
        return place.file() + '\n' + place.sheet() + '\n' + cell.substring(at);
    }
}
