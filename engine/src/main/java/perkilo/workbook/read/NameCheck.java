package perkilo.workbook.read;

import static perkilo.workbook.schema.ComponentsSheet.PRODUCT;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import perkilo.model.Book;
import perkilo.model.Demand;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.model.Names;
import perkilo.model.Offer;
import perkilo.model.Product;
import perkilo.model.Run;
import perkilo.model.StockLot;
import perkilo.origin.Origin;
import perkilo.workbook.read.table.Findings;
import perkilo.workbook.read.table.Spelling;
import perkilo.workbook.read.table.TableRow;
import perkilo.workbook.schema.BatchesSheet;
import perkilo.workbook.schema.ComponentsSheet;
import perkilo.workbook.schema.FormulaSheet;
import perkilo.workbook.schema.SuppliersSheet;

/** Whether every name that is used is known, with the nearest known spelling where it is not. */
final class NameCheck {

    private final Book book;
    private final BookChecks.Items items;
    private final Set<String> described;
    private final Tables tables;
    private final Findings findings;
    private final List<String> offered;

    NameCheck(Book book, BookChecks.Items items, Set<String> described, Tables tables, Findings findings) {
        this.book = book;
        this.items = items;
        this.described = described;
        this.tables = tables;
        this.findings = findings;
        this.offered = book.offers().stream().map(Offer::item).distinct().toList();
    }

    void run() {
        materials();
        components();
        products();
        plans();
        stock();
        suppliers();
    }

    private void materials() {
        List<String> known = new ArrayList<>(offered);
        book.materials().values().stream()
                .filter(material -> described.contains(Names.key(material.name())))
                .map(Material::name)
                .forEach(known::add);
        Set<String> keys = keys(known);
        for (TableRow row : tables.rows(FormulaSheet.SCHEMA, new Findings())) {
            String name = row.text(FormulaSheet.MATERIAL);
            if (!keys.contains(Names.key(name)) && !Material.of(name).isWater()) {
                unknown(
                        row.origin(FormulaSheet.MATERIAL),
                        "material",
                        name,
                        "has neither an offer nor a row in Materials",
                        known);
            }
        }
    }

    private void components() {
        Set<String> keys = keys(offered);
        for (Product product : book.products().values()) {
            for (Product.Component component : product.components()) {
                String key = Names.key(component.name());
                if (!keys.contains(key)) {
                    unknown(component.origin(), "component", component.name(), "has no offer", offered);
                } else if (described.contains(key)) {
                    findings.error(
                            component.origin(),
                            "\"%s\" is a component here, but Materials has it as a raw material; rename one"
                                    .formatted(component.name()));
                }
            }
        }
        List<String> names =
                names(book.products().values().stream().map(Product::name).toList());
        for (TableRow row : tables.rows(ComponentsSheet.SCHEMA, new Findings())) {
            checkProduct(row.text(PRODUCT), row.origin(PRODUCT), names);
        }
    }

    private void products() {
        List<String> formulas =
                names(book.formulas().values().stream().map(Formula::name).toList());
        for (Product product : book.products().values()) {
            checkFormula(product.formula(), product.origin(), formulas);
        }
        for (TableRow row : tables.rows(BatchesSheet.SCHEMA, new Findings())) {
            checkFormula(row.text(BatchesSheet.FORMULA), row.origin(BatchesSheet.FORMULA), formulas);
        }
    }

    private void plans() {
        List<String> products =
                names(book.products().values().stream().map(Product::name).toList());
        List<String> formulas =
                names(book.formulas().values().stream().map(Formula::name).toList());
        for (Run run : book.runs()) {
            if (run instanceof Run.OfProduct units) {
                checkProduct(units.product(), units.origin(), products);
            } else if (run instanceof Run.OfBulk bulk) {
                checkFormula(bulk.formula(), bulk.origin(), formulas);
            }
        }
        for (Demand demand : book.demand()) {
            checkProduct(demand.product(), demand.origin(), products);
        }
    }

    private void stock() {
        List<String> known = new ArrayList<>(offered);
        book.materials().values().forEach(material -> known.add(material.name()));
        items.components().values().forEach(component -> known.add(component.name()));
        Set<String> keys = keys(known);
        for (StockLot lot : book.stock()) {
            if (!keys.contains(Names.key(lot.item()))) {
                unknown(lot.origin(), "item", lot.item(), "is neither offered nor used anywhere", known);
            }
        }
    }

    private void suppliers() {
        if (tables.of(SuppliersSheet.SCHEMA).isEmpty()) {
            return;
        }
        List<String> known = new ArrayList<>();
        for (TableRow row : tables.rows(SuppliersSheet.SCHEMA, new Findings())) {
            known.add(row.text(SuppliersSheet.SUPPLIER));
        }
        Set<String> keys = keys(known);
        for (Offer offer : book.offers()) {
            if (keys.add(Names.key(offer.supplier()))) {
                findings.warning(
                        offer.origin(),
                        "the supplier \"%s\" has no row in Suppliers, so no charges of his are known%s"
                                .formatted(offer.supplier(), proposal(offer.supplier(), known)));
            }
        }
    }

    private void checkProduct(String name, Origin origin, List<String> known) {
        if (!keys(known).contains(Names.key(name))) {
            unknown(origin, "product", name, "has no row in Products", known);
        }
    }

    private void checkFormula(String name, Origin origin, List<String> known) {
        if (!keys(known).contains(Names.key(name))) {
            unknown(origin, "formula", name, "is on no sheet", known);
        }
    }

    private void unknown(Origin origin, String kind, String name, String what, Collection<String> known) {
        findings.error(origin, "the %s \"%s\" %s%s".formatted(kind, name, what, proposal(name, known)));
    }

    private static String proposal(String name, Collection<String> known) {
        return Spelling.nearest(name, known)
                .map(nearest -> "; did you mean \"" + nearest + "\"?"
                        + (Spelling.skeleton(nearest).equals(Spelling.skeleton(name))
                                ? " The two only look alike: some letters are of another alphabet or invisible"
                                : ""))
                .orElse("");
    }

    private static List<String> names(List<String> names) {
        return names.stream().distinct().toList();
    }

    private static Set<String> keys(Collection<String> names) {
        Set<String> keys = new LinkedHashSet<>();
        names.forEach(name -> keys.add(Names.key(name)));
        return keys;
    }
}
