package perkilo.reading.arrange;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.names.Names;
import perkilo.reading.table.Findings;
import perkilo.reading.table.FoundTable;
import perkilo.reading.table.TableFinder;
import perkilo.reading.table.TableRow;
import perkilo.schema.FormulaSheet;
import perkilo.schema.OffersSheet;
import perkilo.schema.SheetSchema;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/** Arranges lines of facts, once the formulas and offers of the workbook are known. */
final class ProductFacts {

    private static final int MOST_ROWS = 200;

    private final ReadingSheet said;
    private final List<Arrangement.Open> open;
    private final Findings findings;
    private final Set<SheetSchema> taken = new HashSet<>();
    private final Set<String> items = new HashSet<>();
    private final Map<String, String> formulas = new LinkedHashMap<>();
    private final Map<String, Set<String>> bySheet = new LinkedHashMap<>();

    /**
     * Facts of a workbook.
     *
     * @param grids its sheets with their tables, as they are arranged so far
     * @param open receives what the facts leave open
     */
    ProductFacts(
            TableFinder finder, List<Grid> grids, ReadingSheet said, List<Arrangement.Open> open, Findings findings) {
        this.said = said;
        this.open = open;
        this.findings = findings;
        for (FoundTable table : finder.find(grids)) {
            taken.add(table.schema());
            table.stream(new Findings()).forEach(row -> learn(table, row));
        }
    }

    private void learn(FoundTable table, TableRow row) {
        if (table.schema().equals(OffersSheet.SCHEMA)) {
            items.add(Names.key(row.cell(OffersSheet.ITEM).text()));
        } else if (table.schema().equals(FormulaSheet.SCHEMA)) {
            String typed = table.has(FormulaSheet.FORMULA)
                    ? row.cell(FormulaSheet.FORMULA).text()
                    : table.grid().title().strip();
            if (!typed.isEmpty()) {
                formulas.putIfAbsent(Names.key(typed), typed);
                bySheet.computeIfAbsent(table.grid().sheet(), any -> new HashSet<>())
                        .add(typed);
            }
        }
    }

    /** The facts of a sheet, or of a part of one; none if it holds none. */
    List<ArrangedPart> parts(Grid grid) {
        if (grid.rows().numbers().length > MOST_ROWS) {
            return List.of();
        }
        FactArranger facts = new FactArranger(grid, items, density(grid), open, findings);
        Set<String> here = bySheet.getOrDefault(grid.sheet(), Set.of());
        if (!facts.isList() && here.isEmpty()) {
            return List.of();
        }
        String named = formulas.getOrDefault(Names.key(facts.formula()), "");
        String byProduct = formulas.getOrDefault(Names.key(facts.product()), "");
        String only = here.size() == 1
                ? here.iterator().next()
                : here.isEmpty() && formulas.size() == 1
                        ? formulas.values().iterator().next()
                        : "";
        String formula = !named.isEmpty() ? named : !byProduct.isEmpty() ? byProduct : only;
        List<ArrangedPart> parts = facts.parts(formula, facts.product(), taken);
        parts.forEach(part -> taken.add(part.schema()));
        return parts;
    }

    private @Nullable BigDecimal density(Grid grid) {
        String answer = said.answers(grid.sheet()).getOrDefault(ReadingSheet.DENSITY, "");
        return answer.isEmpty() ? null : SheetCells.number(Cell.text(answer));
    }
}
