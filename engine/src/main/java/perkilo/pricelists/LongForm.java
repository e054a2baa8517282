package perkilo.pricelists;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import perkilo.names.Names;
import perkilo.schema.OffersSheet;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;
import perkilo.xlsx.grid.Grids;

/**
 * Lists in the long form: CSV with a comma, quoted as RFC 4180, UTF-8.
 *
 * <p>A text that a spreadsheet would take for a formula gets a space before it, which readers remove.
 */
final class LongForm {

    private static final List<String> HEADINGS = List.of(
            "Supplier",
            "Item",
            "Pack size",
            "Pack unit",
            "From quantity",
            "Price",
            "Price per",
            "Currency",
            "Minimum order",
            "Order multiple",
            "Duty %",
            "Quoted on",
            "Valid until",
            OffersSheet.NOTE,
            OffersSheet.FROM_FILE,
            OffersSheet.ARTICLE.header(),
            OffersSheet.LISTED_AS.header());
    private static final String HEADER = String.join(",", HEADINGS) + "\n";

    private LongForm() {}

    /** The rows as the bytes of a file. */
    static byte[] bytes(List<KeptRow> rows) {
        StringBuilder text = new StringBuilder(HEADER);
        for (KeptRow row : rows) {
            KeptRow.Terms terms = row.terms();
            next(quoted(row.supplier()), text);
            next(quoted(row.item()), text);
            next(row.packSize(), text);
            next(row.packUnit(), text);
            next(row.from(), text);
            next(row.price(), text);
            next(row.per(), text);
            next(row.currency(), text);
            next(terms.minimum(), text);
            next(terms.multiple(), text);
            next(terms.duty(), text);
            next(row.quotedOn(), text);
            next(terms.validUntil(), text);
            next(quoted(terms.note()), text);
            next(quoted(row.file()), text);
            next(quoted(terms.article()), text);
            text.append(quoted(terms.listedAs())).append('\n');
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static void next(String field, StringBuilder text) {
        text.append(field).append(',');
    }

    /** Whether a file is a list in the long form. */
    static boolean is(Path file) throws IOException {
        if (!file.toString().endsWith(".csv")) {
            return false;
        }
        try (var in = Files.newInputStream(file)) {
            String beginning = new String(in.readNBytes(HEADER.length()), StandardCharsets.UTF_8);
            String kept = HEADER.substring(0, HEADER.indexOf(",Note"));
            return beginning.replace("\uFEFF", "").replace(';', ',').startsWith(kept);
        }
    }

    /**
     * The rows of a kept list, which a person may have saved in a spreadsheet program.
     *
     * @throws perkilo.xlsx.grid.UnreadableFileException if it cannot be opened
     */
    static List<KeptRow> read(Path file) throws IOException {
        List<KeptRow> rows = new ArrayList<>();
        for (Grid grid : Grids.ofPriceFile(file).sheets()) {
            int[] numbers = grid.rows().numbers();
            if (numbers.length > 0) {
                Map<String, Integer> columns = new HashMap<>();
                grid.row(numbers[0]).forEach((column, cell) -> columns.put(Names.key(cell.text()), column));
                for (int number : grid.rows().below(numbers[0])) {
                    rows.add(row(grid.row(number), columns));
                }
            }
        }
        return rows;
    }

    private static KeptRow row(NavigableMap<Integer, Cell> cells, Map<String, Integer> columns) {
        List<String> texts = new ArrayList<>();
        for (String heading : HEADINGS) {
            Integer column = columns.get(Names.key(heading));
            texts.add(
                    column == null
                            ? ""
                            : cells.getOrDefault(column, Cell.BLANK).text().strip());
        }
        return new KeptRow(
                texts.get(0),
                texts.get(1),
                point(texts.get(2)),
                texts.get(3),
                point(texts.get(4)),
                point(texts.get(5)),
                texts.get(6),
                texts.get(7),
                new KeptRow.Terms(
                        point(texts.get(8)),
                        point(texts.get(9)),
                        point(texts.get(10)),
                        texts.get(12),
                        texts.get(13),
                        texts.get(15),
                        texts.get(16)),
                texts.get(11),
                texts.get(14));
    }

    /** A number with a decimal point; kept lists have no separated thousands. */
    private static String point(String number) {
        return number.indexOf('.') < 0 ? number.replace(',', '.') : number;
    }

    private static boolean needsQuotes(String field) {
        for (int at = 0; at < field.length(); at++) {
            char c = field.charAt(at);
            if (c == ',' || c == '"' || c == '\n' || c == '\r') {
                return true;
            }
        }
        return false;
    }

    /** A text as a field of the file. */
    static String quoted(String field) {
        String safe = !field.isEmpty() && "=+-@\t\r".indexOf(field.charAt(0)) >= 0 ? " " + field : field;
        boolean plain = safe.equals(field) && !needsQuotes(safe);
        boolean number = plain && !field.isEmpty() && Character.isDigit(field.charAt(0));
        return plain && !number ? safe : "\"" + safe.replace("\"", "\"\"") + "\"";
    }
}
