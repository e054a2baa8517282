package perkilo.cli;

import java.util.ArrayList;
import java.util.List;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Table;

/** A table in plain text: the first column is aligned to the left, all others to the right. */
final class TextTable {

    private final List<List<String>> rows = new ArrayList<>();

    TextTable(String... heads) {
        rows.add(List.of(heads));
    }

    /** A declared table with the columns that the terminal shows. */
    static <R> TextTable of(Table.Filled<R> filled) {
        List<Column<R>> shown =
                filled.table().columns().stream().filter(Column::isOnTerminal).toList();
        TextTable table =
                new TextTable(shown.stream().map(Column::terminalHeading).toArray(String[]::new));
        for (R entry : filled.rows()) {
            table.row(shown.stream().map(column -> column.terminalOf(entry)).toList());
        }
        return table;
    }

    /** The lines below the headings. */
    List<List<String>> lines() {
        return List.copyOf(rows.subList(1, rows.size()));
    }

    TextTable row(List<String> cells) {
        rows.add(List.copyOf(cells));
        return this;
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        int columns = rows.get(0).size();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int column = 0; column < columns; column++) {
                line.append(column == 0 ? "" : "  ").append(padded(row.get(column), column));
            }
            text.append(line.toString().stripTrailing()).append(System.lineSeparator());
        }
        return text.toString();
    }

    private String padded(String cell, int column) {
        int width =
                rows.stream().mapToInt(row -> row.get(column).length()).max().orElse(0);
        String spaces = " ".repeat(width - cell.length());
        return column == 0 ? cell + spaces : spaces + cell;
    }
}
