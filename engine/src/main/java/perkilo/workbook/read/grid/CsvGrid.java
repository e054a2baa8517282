package perkilo.workbook.read.grid;

import java.math.BigDecimal;
import java.util.List;
import java.util.NavigableMap;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * A delimited text file as a grid.
 *
 * <p>Where a comma parts the fields, a bare {@code 1.053} can only have a decimal point, and is a number. With other
 * delimiters the mark may be either, and the text stays text.
 */
final class CsvGrid {

    private static final Pattern POINT_DECIMAL = Pattern.compile("[+-]?\\d{1,15}(\\.\\d{1,15})?");

    private CsvGrid() {}

    /** The grid of a text. */
    static Grid of(String file, String text) {
        char delimiter = Csv.delimiter(text);
        NavigableMap<Integer, NavigableMap<Integer, Cell>> cells = new TreeMap<>();
        SortedMap<Integer, Integer> lines = new TreeMap<>();
        int row = 0;
        for (Csv.Line line : Csv.read(text, delimiter)) {
            lines.put(row, line.number());
            NavigableMap<Integer, Cell> columns = columns(line.fields(), delimiter == ',');
            if (!columns.isEmpty()) {
                cells.put(row, columns);
            }
            row++;
        }
        return Grid.ofText(file, title(file), cells, lines);
    }

    private static NavigableMap<Integer, Cell> columns(List<Csv.Field> fields, boolean pointDecimals) {
        NavigableMap<Integer, Cell> columns = new TreeMap<>();
        for (int column = 0; column < fields.size(); column++) {
            Cell cell = cell(fields.get(column), pointDecimals);
            if (!cell.isBlank()) {
                columns.put(column, cell);
            }
        }
        return RowCells.of(columns);
    }

    private static String title(String file) {
        int dot = file.lastIndexOf('.');
        return dot > 0 ? file.substring(0, dot) : file;
    }

    private static Cell cell(Csv.Field field, boolean pointDecimals) {
        String text = field.text().strip();
        boolean number =
                pointDecimals && !field.quoted() && POINT_DECIMAL.matcher(text).matches();
        return number ? Cell.number(new BigDecimal(text)) : Cell.text(field.text());
    }
}
