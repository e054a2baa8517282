package perkilo.reading.table;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import perkilo.origin.Origin;
import perkilo.schema.InputColumn;
import perkilo.xlsx.grid.Cell;

/** Which columns of a table would take the figures of a note below its headers: {@code fill 50 g, 3 % loss}. */
final class NoteFigures {

    private static final int NAMED = 3;

    private NoteFigures() {}

    /** The columns of figures that a row names in words beside figures, with their places; none if it names none. */
    static List<String> places(FoundTable table, int row) {
        List<String> places = new ArrayList<>();
        for (Cell cell : table.grid().row(row).values()) {
            if (cell.kind() == Cell.Kind.TEXT && cell.text().chars().anyMatch(Character::isDigit)) {
                Set<String> words = words(cell.text());
                for (InputColumn column : table.schema().columns()) {
                    if (column.kind().isNumber() && isNamed(column, words) && places.size() < NAMED) {
                        places.add(place(table, column));
                    }
                }
            }
        }
        return places.stream().distinct().toList();
    }

    private static boolean isNamed(InputColumn column, Set<String> words) {
        return Stream.concat(Stream.of(column.bareHeader()), column.synonyms().keySet().stream())
                .map(NoteFigures::words)
                .anyMatch(name -> !name.isEmpty() && words.containsAll(name));
    }

    private static String place(FoundTable table, InputColumn column) {
        FoundTable.Place place = table.columns().get(column);
        return place == null
                ? "a new column \"" + column.header() + "\""
                : "\"" + table.headerText(column) + "\" (column " + Origin.columnName(place.index()) + ")";
    }

    private static Set<String> words(String text) {
        Set<String> words = new HashSet<>();
        for (String word : text.toLowerCase(Locale.ROOT).split("[^\\p{L}]+", -1)) {
            if (!word.isEmpty()) {
                words.add(word);
            }
        }
        return words;
    }
}
