package perkilo.reading;

import java.util.HashMap;
import java.util.Map;
import perkilo.names.Names;
import perkilo.names.Spelling;
import perkilo.origin.Origin;
import perkilo.reading.table.Findings;
import perkilo.reading.table.TableRow;
import perkilo.schema.FormulaSheet;
import perkilo.schema.InputColumn;
import perkilo.schema.MaterialsSheet;
import perkilo.schema.OffersSheet;
import perkilo.schema.ProductsSheet;
import perkilo.schema.SheetSchema;
import perkilo.schema.SuppliersSheet;

/** Finds names that look the same but are not: Cyrillic letters for Latin ones, characters that cannot be seen. */
final class LookAlikeCheck {

    private final Tables tables;
    private final Findings findings;
    private final Map<String, Seen> seen = new HashMap<>();
    private boolean suspicious;

    LookAlikeCheck(Tables tables, Findings findings) {
        this.tables = tables;
        this.findings = findings;
    }

    /** Looks at an offer while it is read: a long list is searched again only if one of its names is suspicious. */
    void noteOffer(TableRow row) {
        suspicious |= Spelling.mayLookLikeAnother(row.cell(OffersSheet.ITEM).text())
                || Spelling.mayLookLikeAnother(row.cell(OffersSheet.SUPPLIER).text());
    }

    /** Reports such names; two can only look the same if at least one of them is suspicious. */
    void run() {
        suspicious |= anySuspicious(MaterialsSheet.SCHEMA, MaterialsSheet.MATERIAL)
                || anySuspicious(FormulaSheet.SCHEMA, FormulaSheet.MATERIAL)
                || anySuspicious(SuppliersSheet.SCHEMA, SuppliersSheet.SUPPLIER)
                || anySuspicious(ProductsSheet.SCHEMA, ProductsSheet.PRODUCT);
        if (!suspicious) {
            return;
        }
        look(MaterialsSheet.SCHEMA, MaterialsSheet.MATERIAL, "item");
        look(OffersSheet.SCHEMA, OffersSheet.ITEM, "item");
        look(FormulaSheet.SCHEMA, FormulaSheet.MATERIAL, "item");
        look(SuppliersSheet.SCHEMA, SuppliersSheet.SUPPLIER, "supplier");
        look(OffersSheet.SCHEMA, OffersSheet.SUPPLIER, "supplier");
        look(ProductsSheet.SCHEMA, ProductsSheet.PRODUCT, "product");
    }

    private boolean anySuspicious(SheetSchema schema, InputColumn column) {
        return tables.stream(schema, new Findings())
                .anyMatch(row -> Spelling.mayLookLikeAnother(row.cell(column).text()));
    }

    private void look(SheetSchema schema, InputColumn column, String kind) {
        for (TableRow row : tables.rows(schema, new Findings())) {
            String name = row.text(column);
            String key = Names.key(name);
            Seen first = seen.putIfAbsent(kind + Spelling.skeleton(name), new Seen(name, key, row.origin(column)));
            if (first != null && !first.key().equals(key)) {
                findings.warning(
                        row.origin(column),
                        NameMessages.lookAlike(
                                name, first.name(), first.origin().where()));
            }
        }
    }

    private record Seen(String name, String key, Origin origin) {}
}
