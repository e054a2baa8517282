package perkilo.reading.arrange;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import perkilo.origin.Origin;
import perkilo.schema.InputColumn;
import perkilo.schema.SettingsSheet;
import perkilo.schema.SheetSchema;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;
import perkilo.xlsx.grid.GridBuilder;

/** A table of ours that takes its cells from lines of labels and values on a person's sheet. */
final class FactTable {

    /** A cell of the table, with the place where it was typed or said. */
    private record Put(Cell cell, Origin place, boolean typed) {}

    private final Grid grid;
    private final SheetSchema schema;
    private final List<Map<InputColumn, Put>> rows = new ArrayList<>();
    private final BitSet used = new BitSet();
    private final BitSet columns = new BitSet();
    private final Map<Integer, String> uses = new HashMap<>();

    FactTable(Grid grid, SheetSchema schema) {
        this.grid = grid;
        this.schema = schema;
    }

    /** Begins a row of the table. */
    FactTable row() {
        rows.add(new LinkedHashMap<>());
        return this;
    }

    /** Puts a cell into the row as it was typed. */
    FactTable typed(InputColumn column, Cell cell, Origin place) {
        rows.get(rows.size() - 1).put(column, new Put(cell, place, true));
        return this;
    }

    /** Puts something into the row that a text says. */
    FactTable said(InputColumn column, Cell cell, Origin place) {
        rows.get(rows.size() - 1).put(column, new Put(cell, place, false));
        return this;
    }

    /** Notes a line of the sheet that was read: its label, and the cells of its value. */
    void read(int row, int label, int value, int last) {
        used.set(row);
        columns.set(label, last + 1);
        uses.put(label, SettingsSheet.SETTING.header());
        for (int column = value; column <= last; column++) {
            uses.put(column, SettingsSheet.VALUE.header());
        }
    }

    boolean isEmpty() {
        return used.isEmpty();
    }

    ArrangedPart part() {
        GridBuilder builder = new GridBuilder(grid, schema.name());
        List<InputColumn> all =
                rows.stream().flatMap(row -> row.keySet().stream()).distinct().toList();
        int first = used.nextSetBit(0);
        Origin begin = grid.origin(first, columns.nextSetBit(0));
        builder.row(begin);
        for (int at = 0; at < all.size(); at++) {
            builder.said(at, Cell.text(all.get(at).header()), begin);
        }
        for (Map<InputColumn, Put> row : rows) {
            builder.row(row.values().iterator().next().place());
            for (int at = 0; at < all.size(); at++) {
                Put put = row.get(all.get(at));
                if (put != null && put.typed()) {
                    builder.typed(at, put.cell(), put.place());
                } else if (put != null) {
                    builder.said(at, put.cell(), put.place());
                }
            }
        }
        return new ArrangedPart(grid, schema, builder.grid(), first - 1, used, columns, uses);
    }
}
