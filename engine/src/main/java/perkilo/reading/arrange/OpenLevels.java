package perkilo.reading.arrange;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import perkilo.origin.Origin;
import perkilo.reading.table.FoundTable;
import perkilo.schema.FormulaSheet;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/** Lines of formulas that are added to effect, for which nobody says about how much: asked, each by itself. */
final class OpenLevels {

    private OpenLevels() {}

    /** The questions of one table of formulas. */
    static List<Arrangement.Open> of(FoundTable table) {
        List<Arrangement.Open> open = new ArrayList<>();
        FoundTable.Place level = table.columns().get(FormulaSheet.LEVEL_OF);
        FoundTable.Place material = table.columns().get(FormulaSheet.MATERIAL);
        if (level == null || material == null || table.has(FormulaSheet.ESTIMATE)) {
            return open;
        }
        Grid grid = table.grid();
        int[] rows = grid.rows().between(table.headerRow(), table.lastRow() + 1);
        Map<String, Boolean> whole = new HashMap<>();
        Arrays.stream(rows)
                .filter(row ->
                        LevelWords.isToHundred(grid.at(row, level.index()).text()))
                .forEach(row -> whole.put(formula(table, row), true));
        for (int row : rows) {
            Cell cell = grid.at(row, level.index());
            String text = cell.text();
            boolean balance = LevelWords.isToHundred(text)
                    || (LevelWords.isBalance(text) && !whole.containsKey(formula(table, row)));
            boolean toEffect = SheetCells.isText(cell)
                    && !balance
                    && (LevelWords.isToEffect(text) || LevelWords.isBalance(text))
                    && LevelWords.estimate(text) == null;
            String name = grid.at(row, material.index()).text();
            if (toEffect && !name.isEmpty()) {
                Origin where = grid.origin(row, level.index());
                open.add(new Arrangement.Open(
                        where,
                        ReadingSheet.ESTIMATE + name,
                        ArrangeMessages.howMuch(name),
                        List.of("0.1", "0.2", "0.5", "1")));
            }
        }
        return open;
    }

    private static String formula(FoundTable table, int row) {
        FoundTable.Place place = table.columns().get(FormulaSheet.FORMULA);
        return place == null ? "" : table.grid().at(row, place.index()).text();
    }
}
