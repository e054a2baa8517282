package perkilo.reading.table;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/**
 * The sheets of a file as a person typed them, and what they said of columns; the account shows their own headers.
 *
 * @param sheets the sheets of the file
 * @param leftOut for a sheet's name in small letters, the keys of the headers that are not to be read, as
 *     {@link HeaderText#key} has them
 */
public record AsTyped(List<Grid> sheets, Map<String, Set<String>> leftOut) {

    /** Nothing was renamed or left out. */
    public static final AsTyped SAME = new AsTyped(List.of(), Map.of());

    public AsTyped {
        sheets = List.copyOf(sheets);
        leftOut = Map.copyOf(leftOut);
    }

    /** The key that all spellings of one header share. */
    public static String key(String header) {
        return HeaderText.key(header);
    }

    /** A table on the sheet as it was typed, with all places the same. */
    FoundTable shown(FoundTable table) {
        return sheets.stream()
                .filter(sheet -> sheet.sheet().equals(table.grid().sheet())
                        && sheet.file().equals(table.grid().file()))
                .findFirst()
                .map(table::on)
                .orElse(table);
    }

    /** Whether a column with a header is left out, because the person says so. */
    boolean isLeftOut(FoundTable table, int column) {
        FoundTable shown = shown(table);
        Cell typed = shown.grid().at(table.headerRow(), column);
        Set<String> left = leftOut.getOrDefault(table.grid().sheet().toLowerCase(Locale.ROOT), Set.of());
        return !typed.isBlank()
                && (left.contains(key(typed.text())) || left.contains(key(UnreadColumn.header(shown, column))));
    }
}
