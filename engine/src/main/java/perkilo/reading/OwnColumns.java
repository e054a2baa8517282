package perkilo.reading;

import static perkilo.schema.FormulaSheet.ESTIMATE;
import static perkilo.schema.FormulaSheet.FORMULA;
import static perkilo.schema.FormulaSheet.KEEP;
import static perkilo.schema.FormulaSheet.LEVEL_OF;
import static perkilo.schema.FormulaSheet.MATERIAL;
import static perkilo.schema.FormulaSheet.PHASE;
import static perkilo.schema.FormulaSheet.PHASE_TEMPERATURE;
import static perkilo.schema.FormulaSheet.ROLE;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import perkilo.model.Formula;
import perkilo.model.OwnColumn;
import perkilo.names.Names;
import perkilo.origin.Origin;
import perkilo.reading.table.ColumnNames;
import perkilo.schema.InputColumn;
import perkilo.schema.MaterialsSheet;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;
import perkilo.xlsx.grid.Grids;

/**
 * The columns of a formula's own sheet beside those that every formula has: they go along when the formula is written
 * anew.
 */
public final class OwnColumns {

    /** What a new sheet of the formula has anyway. */
    private static final List<InputColumn> WRITTEN =
            List.of(PHASE, MATERIAL, LEVEL_OF, PHASE_TEMPERATURE, FORMULA, ESTIMATE, ROLE, KEEP);

    private static final ColumnNames NAMES = new ColumnNames(WRITTEN);
    private static final ColumnNames INCI = new ColumnNames(List.of(MaterialsSheet.INCI));

    /** What speaks of the line, whatever its material is: it stays if the material changes. */
    private static final Set<String> OF_THE_LINE = Set.of("function", "functions", "purpose", "step", "order");

    private OwnColumns() {}

    /**
     * The columns beside the formula's own, in the order of the sheet.
     *
     * @param book the person's workbook
     * @param formula as it was read from it
     * @param written headings of columns that the new sheet has anyway
     * @return none if the formula's lines are not in rows below one row of headings
     */
    public static List<OwnColumn> of(Path book, Formula formula, Set<String> written) throws IOException {
        Origin first = formula.lines().get(0).origin();
        if (first.row() < 0) {
            return List.of();
        }
        Optional<Grid> sheet = Grids.ofBook(book).sheets().stream()
                .filter(grid -> grid.sheet().equals(first.sheet()))
                .findFirst();
        return sheet.isEmpty() ? List.of() : below(sheet.get(), formula, written);
    }

    private static List<OwnColumn> below(Grid grid, Formula formula, Set<String> written) {
        int level = formula.lines().get(0).origin().column();
        int head = headRow(grid, formula.lines().get(0).origin().row(), level);
        List<OwnColumn> columns = new ArrayList<>();
        if (head < 0) {
            return columns;
        }
        int from = level;
        while (from > 0 && !grid.at(head, from - 1).isBlank()) {
            from--;
        }
        for (int column = from; !grid.at(head, column).isBlank(); column++) {
            String heading = grid.at(head, column).text();
            if (NAMES.find(heading).isEmpty() && !written.contains(heading)) {
                columns.add(column(grid, column, heading, formula));
            }
        }
        return columns;
    }

    private static OwnColumn column(Grid grid, int column, String heading, Formula formula) {
        List<OwnColumn.Typed> cells = new ArrayList<>();
        for (Formula.Line line : formula.lines()) {
            int row = line.origin().row();
            Cell cell = row < 0 ? Cell.BLANK : grid.at(row, column);
            cells.add(
                    cell.kind() == Cell.Kind.ERROR
                            ? OwnColumn.Typed.NOTHING
                            : new OwnColumn.Typed(cell.text(), cell.number()));
        }
        return new OwnColumn(heading, kind(heading), cells);
    }

    /** The nearest row above a line that has a heading over the levels; below zero for none. */
    private static int headRow(Grid grid, int line, int level) {
        for (int row = line - 1; row >= 0; row--) {
            boolean over = NAMES.find(grid.at(row, level).text())
                    .filter(named -> named.column().equals(LEVEL_OF))
                    .isPresent();
            if (over) {
                return row;
            }
        }
        return -1;
    }

    private static OwnColumn.Kind kind(String heading) {
        if (INCI.find(heading).isPresent()) {
            return OwnColumn.Kind.INCI;
        }
        return OF_THE_LINE.contains(Names.key(heading)) ? OwnColumn.Kind.LINE : OwnColumn.Kind.MATERIAL;
    }
}
