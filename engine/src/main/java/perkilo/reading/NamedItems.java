package perkilo.reading;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import perkilo.names.Names;
import perkilo.offers.Offer;
import perkilo.reading.arrange.Arrangement;
import perkilo.reading.table.Findings;
import perkilo.reading.table.FoundTable;
import perkilo.reading.table.TableRow;
import perkilo.schema.ComponentsSheet;
import perkilo.schema.FormulaSheet;
import perkilo.schema.InputColumn;
import perkilo.schema.MaterialsSheet;
import perkilo.schema.OffersSheet;
import perkilo.schema.ScenariosSheet;
import perkilo.schema.SheetSchema;
import perkilo.schema.StockSheet;

/**
 * The items that a book names: in formulas, by name or by INCI name, as components, in stock and in scenarios. Price
 * lists hold many more, whose rows need not be read to cost a book or to plan its orders.
 */
final class NamedItems {

    private final Set<String> names = new HashSet<>();

    private NamedItems() {}

    /**
     * What a book names.
     *
     * @param answers which materials lines of formulas mean, as a person said
     */
    static NamedItems of(Tables tables, List<Arrangement.MaterialAnswer> answers) {
        NamedItems items = new NamedItems();
        items.add(tables, FormulaSheet.SCHEMA, FormulaSheet.MATERIAL);
        items.add(tables, ComponentsSheet.SCHEMA, ComponentsSheet.COMPONENT);
        items.add(tables, StockSheet.SCHEMA, StockSheet.ITEM);
        items.add(tables, ScenariosSheet.SCHEMA, ScenariosSheet.WHAT);
        answers.forEach(answer -> items.names.add(Names.key(answer.material())));
        Set<String> incis = incis(tables);
        if (!incis.isEmpty()) {
            Map<String, Boolean> known = new HashMap<>();
            items.addByInci(tables, MaterialsSheet.SCHEMA, MaterialsSheet.MATERIAL, MaterialsSheet.INCI, incis, known);
            items.addByInci(tables, OffersSheet.SCHEMA, OffersSheet.ITEM, OffersSheet.INCI, incis, known);
        }
        return items;
    }

    private static Set<String> incis(Tables tables) {
        Set<String> incis = new HashSet<>();
        for (FoundTable table : tables.of(FormulaSheet.SCHEMA)) {
            if (table.has(FormulaSheet.INCI)) {
                table.stream(new Findings())
                        .forEach(row -> incis.add(
                                InciKeys.of(row.cell(FormulaSheet.INCI).text())));
            }
        }
        incis.remove("");
        return incis;
    }

    /**
     * Adds what a line of a formula may mean by its INCI name.
     *
     * @param known whether INCI names, as typed, are among those of the formulas; lists repeat them
     */
    private void addByInci(
            Tables tables,
            SheetSchema schema,
            InputColumn name,
            InputColumn inci,
            Set<String> incis,
            Map<String, Boolean> known) {
        for (FoundTable table : tables.of(schema)) {
            if (table.has(inci)) {
                table.stream(new Findings())
                        .filter(row -> known.computeIfAbsent(
                                row.cell(inci).text(), typed -> incis.contains(InciKeys.of(typed))))
                        .forEach(row -> names.add(Names.key(row.cell(name).text())));
            }
        }
    }

    private void add(Tables tables, SheetSchema schema, InputColumn column) {
        tables.stream(schema, new Findings())
                .forEach(row -> names.add(Names.key(row.cell(column).text())));
    }

    /** Whether a row of offers is of one of them. */
    boolean has(TableRow row) {
        return names.contains(Names.key(row.cell(OffersSheet.ITEM).text()));
    }

    /** Whether an offer is of one of them. */
    boolean has(Offer offer) {
        return names.contains(Names.key(offer.item()));
    }
}
