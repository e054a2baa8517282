package perkilo.swaps;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads a comma-separated file as rows by column name. */
final class Csv {

    private Csv() {}

    /** A file below the project's top folder. */
    static Path file(String path) {
        Path here = Path.of("").toAbsolutePath();
        Path above = here.getParent();
        return above == null || Files.exists(here.resolve("prices")) ? here.resolve(path) : above.resolve(path);
    }

    static List<Map<String, String>> read(String path) {
        try {
            List<List<String>> rows = parse(Files.readString(file(path)));
            List<String> header = rows.get(0);
            List<Map<String, String>> named = new ArrayList<>();
            for (List<String> row : rows.subList(1, rows.size())) {
                Map<String, String> cells = new LinkedHashMap<>();
                for (int i = 0; i < header.size(); i++) {
                    cells.put(header.get(i), i < row.size() ? row.get(i).strip() : "");
                }
                named.add(cells);
            }
            return named;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static List<List<String>> parse(String text) {
        List<List<String>> rows = new ArrayList<>();
        List<String> row = new ArrayList<>();
        StringBuilder field = new StringBuilder();
        boolean quoted = false;
        for (int at = 0; at < text.length(); at++) {
            char letter = text.charAt(at);
            if (letter == '"' && quoted && at + 1 < text.length() && text.charAt(at + 1) == '"') {
                field.append(letter);
                at++;
            } else if (letter == '"') {
                quoted = !quoted;
            } else if (letter == ',' && !quoted) {
                row.add(field.toString());
                field.setLength(0);
            } else if (letter == '\n' && !quoted) {
                row.add(field.toString());
                field.setLength(0);
                rows.add(List.copyOf(row));
                row.clear();
            } else if (letter != '\r') {
                field.append(letter);
            }
        }
        if (field.length() > 0 || !row.isEmpty()) {
            row.add(field.toString());
            rows.add(List.copyOf(row));
        }
        return rows;
    }
}
