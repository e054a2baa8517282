package perkilo.reading;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.function.BinaryOperator;
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
import perkilo.schema.ComponentsSheet;
import perkilo.schema.FormulaSheet;
import perkilo.schema.InputColumn;
import perkilo.schema.OffersSheet;
import perkilo.schema.ProductsSheet;
import perkilo.schema.SheetSchema;

/** Checks that every name in use is known, and proposes the nearest known name if it is not. */
final class NameCheck {

    private final Book book;
    private final Set<String> described;
    private final InciLinks links;
    private final Tables tables;
    private final Findings findings;
    private final Vocabulary offered;
    private final Vocabulary products;
    private final Vocabulary formulas;

    NameCheck(Book book, Set<String> described, InciLinks links, Tables tables, Findings findings) {
        this.links = links;
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
    }

    private void materials() {
        List<String> rows = book.materials().values().stream()
                .map(Material::name)
                .filter(name -> described.contains(Names.key(name)))
                .toList();
        Vocabulary known = new Vocabulary(joined(offered.names(), rows), this::inOffers);
        for (TableRow row : tables.rows(FormulaSheet.SCHEMA, new Findings())) {
            String name = links.material(row);
            boolean unknown = !known.has(name) && !Material.of(name).isWater() && !links.isAsked(row);
            if (unknown && !name.isEmpty() && known.names().isEmpty()) {
                findings.error(row.origin(FormulaSheet.MATERIAL), NameMessages.noPricesOfMaterials());
            } else if (unknown) {
                unknown(row.origin(FormulaSheet.MATERIAL), name, known, NameMessages::unknownMaterial);
            }
        }
    }

    private void components() {
        for (Product product : book.products().values()) {
            for (Product.Component component : product.components()) {
                String name = component.name();
                if (!offered.has(name) && offered.names().isEmpty()) {
                    findings.error(component.origin(), NameMessages.noPricesOfComponents());
                } else if (!offered.has(name)) {
                    unknown(component.origin(), name, offered, NameMessages::unknownComponent);
                } else if (described.contains(Names.key(name))) {
                    findings.error(component.origin(), NameMessages.componentAndMaterial(name));
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

    private void formulas(SheetSchema schema, InputColumn column) {
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
                tables.stream(FormulaSheet.SCHEMA, new Findings())
                        .map(links::material)
                        .toList());
        return joined(inOffers(), used);
    }

    private void checkProduct(String name, Origin origin) {
        if (!products.has(name)) {
            unknown(origin, name, products, NameMessages::unknownProduct);
        }
    }

    private void checkFormula(String name, Origin origin) {
        if (!formulas.has(name)) {
            unknown(origin, name, formulas, NameMessages::unknownFormula);
        }
    }

    /** Reports a name that is unknown; a blank name was reported before. */
    private void unknown(Origin origin, String name, Vocabulary known, BinaryOperator<String> message) {
        if (!name.isEmpty()) {
            findings.error(origin, message.apply(name, nearest(name, known.names())));
        }
    }

    /** The known name that is nearest to another; empty if none is near. */
    private static String nearest(String name, Collection<String> known) {
        return Spelling.nearest(name, known).orElse("");
    }

    private List<String> inOffers() {
        return names(OffersSheet.SCHEMA, OffersSheet.ITEM);
    }

    private static List<String> joined(List<String> some, List<String> others) {
        List<String> all = new ArrayList<>(some);
        all.addAll(others);
        return all;
    }

    /** The words in one column of all tables of one kind. */
    private List<String> names(SheetSchema schema, InputColumn column) {
        return tables.stream(schema, new Findings())
                .map(row -> row.text(column))
                .toList();
    }
}
