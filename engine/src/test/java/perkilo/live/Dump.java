package perkilo.live;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.ss.util.CellReference;

/**
 * What the sheets of a workbook hold once an office suite has recalculated them.
 *
 * @param sheets by name: the cells by row and column from zero, each a {@link Double} or words
 * @param errors the cells that show an error, such as {@code Cost detail: D5:D9}
 */
record Dump(Map<String, Map<Integer, Map<Integer, Object>>> sheets, List<String> errors) {

    /** Reads the dumps of a script, by the edits' names. */
    static Map<String, Dump> read(Path file) throws IOException {
        Map<String, Dump> all = new LinkedHashMap<>();
        Dump dump = new Dump(new TreeMap<>(), new ArrayList<>());
        Map<Integer, Map<Integer, Object>> sheet = new TreeMap<>();
        for (String line : Files.readString(file, UTF_8).split("\n", -1)) {
            String[] parts = line.split("\t", -1);
            switch (parts[0]) {
                case "edit" -> {
                    dump = new Dump(new TreeMap<>(), new ArrayList<>());
                    all.put(parts[1], dump);
                }
                case "sheet" -> {
                    sheet = new TreeMap<>();
                    dump.sheets.put(parts[1], sheet);
                    if (!parts[2].isEmpty()) {
                        dump.errors.add(parts[2]);
                    }
                }
                case "row" -> sheet.put(Integer.valueOf(parts[1]), cells(parts));
                default -> {}
            }
        }
        return all;
    }

    private static Map<Integer, Object> cells(String[] parts) {
        Map<Integer, Object> cells = new TreeMap<>();
        for (int i = 2; i < parts.length; i++) {
            if (!parts[i].isEmpty()) {
                String content = parts[i].substring(1);
                cells.put(i - 2, parts[i].charAt(0) == 'n' ? Double.valueOf(content) : content);
            }
        }
        return cells;
    }

    /** The cells of a row. */
    Map<Integer, Object> row(String sheet, int row) {
        return sheets.getOrDefault(sheet, Map.of()).getOrDefault(row, Map.of());
    }

    /** The rows with a text in their first cell. */
    List<Map<Integer, Object>> rows(String sheet, String label) {
        return sheets.getOrDefault(sheet, Map.of()).values().stream()
                .filter(row -> label.equals(row.get(0)))
                .toList();
    }

    /** The words in the first column of a sheet's first rows. */
    String firstLines(String sheet, int rows) {
        StringBuilder words = new StringBuilder();
        for (int row = 0; row < rows; row++) {
            Object content = sheets.getOrDefault(sheet, Map.of())
                    .getOrDefault(row, Map.of())
                    .get(0);
            words.append(content == null ? "" : content).append('\n');
        }
        return words.toString();
    }

    /**
     * The cell below a heading.
     *
     * @param place such as {@code Packs+2} for the second row below it, or {@code Packs+2#3} below the third such
     *     heading
     */
    String below(String sheet, String place) {
        String[] parts = place.split("[+#]", -1);
        int skip = parts.length > 2 ? Integer.parseInt(parts[2]) - 1 : 0;
        for (Map.Entry<Integer, Map<Integer, Object>> row :
                sheets.getOrDefault(sheet, Map.of()).entrySet()) {
            for (Map.Entry<Integer, Object> cell : row.getValue().entrySet()) {
                if (cell.getValue().equals(parts[0]) && skip-- == 0) {
                    return new CellReference(row.getKey() + Integer.parseInt(parts[1]), cell.getKey()).formatAsString();
                }
            }
        }
        throw new AssertionError("no heading " + place + " on " + sheet);
    }
}
