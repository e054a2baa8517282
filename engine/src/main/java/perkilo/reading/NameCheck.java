package perkilo.reading;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import perkilo.model.Book;
import perkilo.model.Demand;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.model.Product;
import perkilo.model.Run;
import perkilo.names.Names;
import perkilo.names.Spelling;
import perkilo.offers.Offer;
import perkilo.origin.Origin;
import perkilo.reading.table.Findings;
import perkilo.reading.table.TableRow;
import perkilo.schema.BatchesSheet;
import perkilo.schema.Column;
import perkilo.schema.ComponentsSheet;
import perkilo.schema.FormulaSheet;
import perkilo.schema.OffersSheet;
import perkilo.schema.ProductsSheet;
import perkilo.schema.SheetSchema;
import perkilo.schema.SuppliersSheet;

/** Whether every name that is used is known, with the nearest known spelling where it is not. */
final class NameCheck {

    private final Book book;
    private final Set<String> described;
    private final Tables tables;
    private final Findings findings;
    private final Vocabulary offered;
    private final Vocabulary products;
    private final Vocabulary formulas;

    NameCheck(Book book, Set<String> described, Tables tables, Findings findings) {
        this.book = book;
        this.described = described;
        this.tables = tables;
        this.findings = findings;
        this.offered = new Vocabulary(book.offers().stream().map(Offer::item).toList(), this::inOffers);
        this.products = new Vocabulary(
                book.products().values().stream().map(Product::name).toList(),
                () -> names(ProductsSheet.SCHEMA, ProductsSheet.PRODUCT));
        this.formulas = new Vocabulary(
                book.formulas().values().stream().map(Formula::name).toList(), () -> FormulaTables.names(tables));
    }

    void run() {
        materials();
        components();
        formulas();
        plans();
        stock();
        suppliers();
    }

    private void materials() {
        List<String> rows = book.materials().values().stream()
                .map(Material::name)
                .filter(name -> described.contains(Names.key(name)))
                .toList();
        Vocabulary known = new Vocabulary(joined(offered.names(), rows), this::inOffers);
        for (TableRow row : tables.rows(FormulaSheet.SCHEMA, new Findings())) {
            String name = row.text(FormulaSheet.MATERIAL);
            if (!known.has(name) && !Material.of(name).isWater()) {
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
        for (Product product : book.products().values()) {
            for (Product.Component component : product.components()) {
                String name = component.name();
                if (!offered.has(name)) {
                    unknown(component.origin(), "component", name, "has no offer", offered);
                } else if (described.contains(Names.key(name))) {
                    findings.error(
                            component.origin(),
                            "\"%s\" is a component here, but Materials has it as a raw material; rename one"
                                    .formatted(name));
                }
            }
        }
        for (TableRow row : tables.rows(ComponentsSheet.SCHEMA, new Findings())) {
            checkProduct(row.text(ComponentsSheet.PRODUCT), row.origin(ComponentsSheet.PRODUCT));
        }
    }

    private void formulas() {
        formulas(ProductsSheet.SCHEMA, ProductsSheet.FORMULA);
        formulas(BatchesSheet.SCHEMA, BatchesSheet.FORMULA);
    }

    private void formulas(SheetSchema schema, Column column) {
        for (TableRow row : tables.rows(schema, new Findings())) {
            checkFormula(row.text(column), row.origin(column));
        }
    }

    private void plans() {
        for (Run run : book.runs()) {
            if (run instanceof Run.OfProduct units) {
                checkProduct(units.product(), units.origin());
            } else if (run instanceof Run.OfBulk bulk) {
                checkFormula(bulk.formula(), bulk.origin());
            }
        }
        for (Demand demand : book.demand()) {
            checkProduct(demand.product(), demand.origin());
        }
    }

    private void stock() {
        List<String> materials =
                book.materials().values().stream().map(Material::name).toList();
        Vocabulary known = new Vocabulary(joined(offered.names(), materials), this::whatIsOfferedOrUsed);
        new StockNames(known, findings).check(book.stock());
    }

    private List<String> whatIsOfferedOrUsed() {
        List<String> used = joined(
                names(ComponentsSheet.SCHEMA, ComponentsSheet.COMPONENT),
                names(FormulaSheet.SCHEMA, FormulaSheet.MATERIAL));
        return joined(inOffers(), used);
    }

    private void suppliers() {
        if (tables.of(SuppliersSheet.SCHEMA).isEmpty()) {
            return;
        }
        List<String> known = names(SuppliersSheet.SCHEMA, SuppliersSheet.SUPPLIER);
        Set<String> keys = new HashSet<>();
        known.forEach(name -> keys.add(Names.key(name)));
        for (Offer offer : book.offers()) {
            if (keys.add(Names.key(offer.supplier()))) {
                findings.warning(
                        offer.origin(),
                        "the supplier \"%s\" has no row in Suppliers, so no charges of his are known%s"
                                .formatted(offer.supplier(), proposal(offer.supplier(), known)));
            }
        }
    }

    private void checkProduct(String name, Origin origin) {
        if (!products.has(name)) {
            unknown(origin, "product", name, "has no row in Products", products);
        }
    }

    private void checkFormula(String name, Origin origin) {
        if (!formulas.has(name)) {
            unknown(origin, "formula", name, "is on no sheet", formulas);
        }
    }

    /** Reports a name that nothing has; where there is none, the cell was reported before. */
    private void unknown(Origin origin, String kind, String name, String what, Vocabulary known) {
        if (!name.isEmpty()) {
            findings.error(origin, "the %s \"%s\" %s%s".formatted(kind, name, what, proposal(name, known.names())));
        }
    }

    private static String proposal(String name, Collection<String> known) {
        return Spelling.nearest(name, known)
                .map(nearest -> proposal(name, nearest))
                .orElse("");
    }

    /** The end of a sentence that asks whether another name was meant. */
    static String proposal(String name, String meant) {
        boolean lookAlike = Spelling.skeleton(meant).equals(Spelling.skeleton(name));
        return "; did you mean \"%s\"?%s"
                .formatted(
                        meant,
                        lookAlike ? " The two only look alike: some letters are of another alphabet or invisible" : "");
    }

    private List<String> inOffers() {
        return names(OffersSheet.SCHEMA, OffersSheet.ITEM);
    }

    private static List<String> joined(List<String> some, List<String> others) {
        List<String> all = new ArrayList<>(some);
        all.addAll(others);
        return all;
    }

    /** What stands in a column of all tables of one kind. */
    private List<String> names(SheetSchema schema, Column column) {
        return tables.stream(schema, new Findings())
                .map(row -> row.text(column))
                .toList();
    }
}
