package perkilo.review;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;
import perkilo.xlsx.grid.Grids;

/** What a person filled in on review sheets, by the key of each row. */
public final class FilledIn {

    /** Parts the key of a row from what was filled in at first. */
    static final char SEPARATOR = '.';

    private static final int ROWS_LOOKED_AT = 20;

    private final Map<String, FilledRow> byKey;

    private FilledIn(Map<String, FilledRow> byKey) {
        this.byKey = byKey;
    }

    /**
     * One row.
     *
     * @param sheet the sheet's name
     * @param key what the row is about
     * @param words of all its cells, by their headings; cells without words are missing
     * @param changed whether a person changed an answer since the sheet was written
     */
    public record FilledRow(String sheet, String key, Map<String, String> words, boolean changed) {

        public FilledRow {
            words = Collections.unmodifiableMap(new LinkedHashMap<>(words));
        }

        /** The words under a heading; empty if there are none. */
        public String under(String heading) {
            return words.getOrDefault(heading, "");
        }
    }

    /** Nothing is filled in. */
    public static FilledIn nothing() {
        return new FilledIn(Map.of());
    }

    /**
     * Reads the sheets of a workbook that hold keys; nothing if there is no such file.
     *
     * @param answers the headings of the cells that are filled in
     * @throws perkilo.xlsx.grid.UnreadableFileException if the file is not a workbook that can be opened
     */
    public static FilledIn read(Path file, List<String> answers) throws IOException {
        return Files.exists(file) ? of(Grids.ofPriceFile(file).sheets(), answers) : nothing();
    }

    /** What is filled in on sheets that hold keys; the other sheets are left out. */
    public static FilledIn of(List<Grid> sheets, List<String> answers) {
        List<String> sorted = answers.stream().sorted().toList();
        Map<String, FilledRow> rows = new LinkedHashMap<>();
        sheets.forEach(sheet -> read(sheet, sorted, rows));
        return new FilledIn(rows);
    }

    private static void read(Grid sheet, List<String> answers, Map<String, FilledRow> rows) {
        int[] numbers = sheet.rows().numbers();
        for (int at = 0; at < Math.min(ROWS_LOOKED_AT, numbers.length); at++) {
            NavigableMap<Integer, String> headings = words(sheet.row(numbers[at]));
            if (headings.containsValue(ReviewSheet.KEY)) {
                for (int row : sheet.rows().below(numbers[at])) {
                    read(sheet.sheet(), headings, words(sheet.row(row)), answers, rows);
                }
                return;
            }
        }
    }

    private static void read(
            String sheet,
            NavigableMap<Integer, String> headings,
            NavigableMap<Integer, String> cells,
            List<String> answers,
            Map<String, FilledRow> rows) {
        Map<String, String> words = new LinkedHashMap<>();
        headings.forEach((column, heading) -> {
            String text = cells.getOrDefault(column, "");
            if (!text.isEmpty()) {
                words.putIfAbsent(heading, text);
            }
        });
        String key = words.getOrDefault(ReviewSheet.KEY, "");
        int end = key.indexOf(SEPARATOR);
        if (end > 0) {
            List<String> filled = new ArrayList<>();
            for (String answer : answers) {
                if (headings.containsValue(answer)) {
                    filled.add(words.getOrDefault(answer, ""));
                }
            }
            boolean changed = !Key.check(filled).equals(key.substring(end + 1));
            FilledRow row = new FilledRow(sheet, key.substring(0, end), words, changed);
            rows.merge(row.key(), row, (one, other) -> one.changed() ? one : other);
        }
    }

    private static NavigableMap<Integer, String> words(Map<Integer, Cell> cells) {
        NavigableMap<Integer, String> words = new TreeMap<>();
        cells.forEach((column, cell) -> words.put(
                column, cell.kind() == Cell.Kind.ERROR ? "" : cell.text().strip()));
        return words;
    }

    /** Whether there are no rows. */
    public boolean isEmpty() {
        return byKey.isEmpty();
    }

    /** The row of a key; empty if there is none. */
    public Optional<FilledRow> row(String key) {
        return Optional.ofNullable(byKey.get(key));
    }

    /** The words of a key's row under a heading; empty if there are none. */
    public Optional<String> answer(String key, String heading) {
        return row(key).map(row -> row.under(heading)).filter(words -> !words.isEmpty());
    }

    /** All rows, in the order of the workbook. */
    public List<FilledRow> rows() {
        return List.copyOf(byKey.values());
    }
}
