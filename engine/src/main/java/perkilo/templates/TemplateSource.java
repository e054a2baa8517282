package perkilo.templates;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import perkilo.schema.FormulaSheet;
import perkilo.schema.Schemas;
import perkilo.schema.SheetSchema;
import perkilo.xlsx.grid.Csv;

/**
 * The content of a template's workbook.
 *
 * @param startHere the lines of the first sheet
 * @param tables by sheet name, in the order of the tabs
 */
record TemplateSource(List<String> startHere, Map<String, Table> tables) {

    /**
     * The table of one sheet.
     *
     * @param schema the description of the sheet
     * @param rows as text, headers first
     */
    record Table(SheetSchema schema, List<List<String>> rows) {}

    /**
     * Reads a folder that holds {@code Start here.txt} and a CSV file for each sheet; a file whose name is not a known
     * sheet is a formula.
     */
    static TemplateSource read(Path folder) throws IOException {
        Map<String, Path> files = new LinkedHashMap<>();
        try (Stream<Path> all = Files.list(folder)) {
            all.filter(file -> file.toString().endsWith(".csv")).sorted().forEach(file -> files.put(name(file), file));
        }
        Map<String, Table> tables = new LinkedHashMap<>();
        for (SheetSchema schema : Schemas.ALL) {
            Path file = files.remove(schema.name());
            if (file != null) {
                tables.put(schema.name(), new Table(schema, rows(file)));
            }
        }
        List<String> start = Files.readAllLines(folder.resolve("Start here.txt"), StandardCharsets.UTF_8);
        return new TemplateSource(start, withFormulas(tables, files));
    }

    /** The tables in the order of the tabs; formulas come after the materials. */
    private static Map<String, Table> withFormulas(Map<String, Table> tables, Map<String, Path> formulas)
            throws IOException {
        Map<String, Table> ordered = new LinkedHashMap<>();
        boolean placed = false;
        List<String> before = Schemas.ALL.stream()
                .map(SheetSchema::name)
                .takeWhile(name -> !name.equals(FormulaSheet.SCHEMA.name()))
                .toList();
        for (Map.Entry<String, Table> table : tables.entrySet()) {
            if (!placed && !before.contains(table.getKey())) {
                putFormulas(ordered, formulas);
                placed = true;
            }
            ordered.put(table.getKey(), table.getValue());
        }
        if (!placed) {
            putFormulas(ordered, formulas);
        }
        return ordered;
    }

    private static void putFormulas(Map<String, Table> ordered, Map<String, Path> formulas) throws IOException {
        for (Map.Entry<String, Path> formula : formulas.entrySet()) {
            ordered.put(formula.getKey(), new Table(FormulaSheet.SCHEMA, rows(formula.getValue())));
        }
    }

    private static List<List<String>> rows(Path file) throws IOException {
        List<List<String>> rows = new ArrayList<>();
        for (Csv.Line line : Csv.read(Files.readString(file, StandardCharsets.UTF_8), ',')) {
            List<String> fields = line.fields().stream().map(Csv.Field::text).toList();
            if (fields.stream().anyMatch(field -> !field.isBlank())) {
                rows.add(fields);
            }
        }
        return rows;
    }

    private static String name(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.substring(0, name.length() - ".csv".length());
    }
}
