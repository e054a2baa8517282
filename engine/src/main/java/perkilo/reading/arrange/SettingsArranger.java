package perkilo.reading.arrange;

import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import perkilo.reading.table.ColumnNames;
import perkilo.reading.table.FoundTable;
import perkilo.schema.SettingsSheet;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;
import perkilo.xlsx.grid.GridBuilder;

/** Arranges a sheet of settings that has no headers: names in one column, values in the next one. */
final class SettingsArranger {

    private static final ColumnNames SETTINGS = new ColumnNames(SettingsSheet.SETTINGS);

    private final Grid grid;
    private final Grid head;
    private final List<FoundTable> tables;

    /**
     * Looks for settings on a sheet.
     *
     * @param head its first rows
     * @param tables those that are understood as they are, in the sheet's first rows
     */
    SettingsArranger(Grid grid, Grid head, List<FoundTable> tables) {
        this.grid = grid;
        this.head = head;
        this.tables = tables;
    }

    /** The settings of a sheet with the name of that table; empty if it has headers, or names no setting. */
    Optional<ArrangedPart> part() {
        boolean called = grid.kind().equals(SettingsSheet.SCHEMA.name())
                || grid.title().equalsIgnoreCase(SettingsSheet.SCHEMA.name())
                || SettingsSheet.SCHEMA.otherNames().stream().anyMatch(grid.title()::equalsIgnoreCase);
        if (!called || !tables.isEmpty()) {
            return Optional.empty();
        }
        for (int row : head.rows().numbers()) {
            Integer name = name(row);
            if (name != null) {
                return Optional.of(table(row, name));
            }
        }
        return Optional.empty();
    }

    /** The column of a row that names a setting, with something beside it. */
    private @Nullable Integer name(int row) {
        for (Map.Entry<Integer, Cell> cell : head.row(row).entrySet()) {
            if (SheetCells.isText(cell.getValue())
                    && SETTINGS.find(cell.getValue().text()).isPresent()
                    && !head.at(row, cell.getKey() + 1).isBlank()) {
                return cell.getKey();
            }
        }
        return null;
    }

    private ArrangedPart table(int first, int name) {
        int value = name + 1;
        GridBuilder builder = new GridBuilder(grid, SettingsSheet.SCHEMA.name());
        builder.row(grid.origin(first, name));
        builder.said(0, Cell.text(SettingsSheet.SETTING.header()), grid.origin(first, name));
        builder.said(1, Cell.text(SettingsSheet.VALUE.header()), grid.origin(first, value));
        BitSet used = new BitSet();
        for (int row : grid.rows().below(first - 1)) {
            if (!grid.at(row, name).isBlank()) {
                used.set(row);
                builder.row(grid.origin(row, name));
                builder.typed(0, row, name);
                builder.typed(1, row, value);
            }
        }
        BitSet columns = new BitSet();
        columns.set(name, value + 1);
        return new ArrangedPart(
                grid,
                SettingsSheet.SCHEMA,
                builder.grid(),
                first - 1,
                used,
                columns,
                Map.of(name, SettingsSheet.SETTING.header(), value, SettingsSheet.VALUE.header()));
    }
}
