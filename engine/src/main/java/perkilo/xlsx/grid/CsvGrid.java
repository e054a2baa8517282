package perkilo.xlsx.grid;

import java.util.List;
import java.util.regex.Pattern;

/**
 * A delimited text file as a grid.
 *
 * <p>If a comma separates the fields, the point in a bare {@code 1.053} is a decimal point, so the field is a number.
 * With other delimiters the point may also separate thousands, so the field stays text.
 */
final class CsvGrid {

    private static final Pattern POINT_DECIMAL = Pattern.compile("[+-]?\\d{1,15}(\\.\\d{1,15})?");

    private CsvGrid() {}

    /** The grid of a text. */
    static Grid of(String file, String text) {
        char delimiter = Csv.delimiter(text);
        TextCells maker = new TextCells();
        GridRows.Builder rows = new GridRows.Builder(maker);
        PackedRow row = new PackedRow();
        int[] number = {0};
        Csv.read(text, delimiter, line -> {
            row.clear();
            pack(line.fields(), delimiter == ',', row, maker);
            if (row.count() > 0) {
                rows.add(number[0], line.number(), row);
            }
            number[0]++;
        });
        return Grid.ofText(file, title(file), rows.rows());
    }

    private static void pack(List<Csv.Field> fields, boolean pointDecimals, PackedRow row, TextCells maker) {
        for (int column = 0; column < fields.size(); column++) {
            Csv.Field field = fields.get(column);
            String text = field.text().strip();
            if (pointDecimals && !field.quoted() && isNumber(text)) {
                row.number(column, 0, text);
            } else if (!text.isEmpty()) {
                maker.pack(row, column, Cell.text(field.text()));
            }
        }
    }

    private static boolean isNumber(String text) {
        boolean perhaps = !text.isEmpty() && text.charAt(text.length() - 1) <= '9';
        return perhaps && POINT_DECIMAL.matcher(text).matches();
    }

    private static String title(String file) {
        int dot = file.lastIndexOf('.');
        return dot > 0 ? file.substring(0, dot) : file;
    }
}
