package perkilo.swaps.facts;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** A reader of tables of published figures and of choices, each row with its source. */
public final class FactTable {

    private FactTable() {}

    /**
     * The rows of a table beside a class, without its header.
     *
     * @param beside a class in the table's package
     * @param name such as {@code limits.csv}
     * @return fields by row, as many as the header has
     */
    public static List<List<String>> read(Class<?> beside, String name) {
        InputStream stream = beside.getResourceAsStream(name);
        if (stream == null) {
            throw new IllegalStateException("no table " + name + " beside " + beside.getName());
        }
        List<List<String>> rows = read(stream);
        return rows.subList(1, rows.size());
    }

    /**
     * The rows of a table, its header first.
     *
     * @param stream of the table; it is closed
     */
    public static List<List<String>> read(InputStream stream) {
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return lines.lines().map(FactTable::fields).toList();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** Fields between commas; quotation marks keep a comma inside. */
    private static List<String> fields(String line) {
        List<String> fields = new ArrayList<>();
        StringBuilder field = new StringBuilder();
        boolean quoted = false;
        for (int at = 0; at < line.length(); at++) {
            char letter = line.charAt(at);
            if (letter == '"') {
                quoted = !quoted;
            } else if (letter == ',' && !quoted) {
                fields.add(field.toString());
                field.setLength(0);
            } else {
                field.append(letter);
            }
        }
        fields.add(field.toString());
        return fields;
    }
}
