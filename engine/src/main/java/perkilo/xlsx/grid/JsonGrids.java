package perkilo.xlsx.grid;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * JSON tables as grids: an array of objects, or an object of such arrays; the objects' keys are the headers.
 *
 * <p>An array's name serves as the sheet's name when tables are recognised; messages name the line.
 */
final class JsonGrids {

    private static final int LONGEST_NUMBER = 60;

    private final String file;
    private final JsonParser parser;
    private final List<Grid> grids = new ArrayList<>();

    private JsonGrids(String file, JsonParser parser) {
        this.file = file;
        this.parser = parser;
    }

    /**
     * The grids of a text.
     *
     * @throws JsonParseException if the text is not JSON, or not made of tables
     */
    static List<Grid> of(String file, String text) throws IOException {
        try (JsonParser parser = new JsonFactory().createParser(text)) {
            JsonGrids reader = new JsonGrids(file, parser);
            reader.read();
            return reader.grids;
        }
    }

    private void read() throws IOException {
        JsonToken first = parser.nextToken();
        if (first == JsonToken.START_ARRAY) {
            table("");
            return;
        }
        expect(first, JsonToken.START_OBJECT);
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            if (parser.nextToken() == JsonToken.START_ARRAY) {
                table(name);
            } else {
                parser.skipChildren();
            }
        }
    }

    private void table(String title) throws IOException {
        TextCells maker = new TextCells();
        GridRows.Builder rows = new GridRows.Builder(maker);
        Map<String, Integer> headers = new LinkedHashMap<>();
        rows.add(0, parser.currentTokenLocation().getLineNr(), new PackedRow());
        int row = 1;
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            expect(parser.currentToken(), JsonToken.START_OBJECT);
            int line = parser.currentTokenLocation().getLineNr();
            rows.add(row, line, packed(row(headers), maker));
            row++;
        }
        NavigableMap<Integer, Cell> top = new TreeMap<>();
        headers.forEach((header, column) -> top.put(column, Cell.text(header)));
        rows.add(0, packed(top, maker));
        grids.add(Grid.ofText(file, title, rows.rows()));
    }

    private static PackedRow packed(NavigableMap<Integer, Cell> cells, TextCells maker) {
        PackedRow row = new PackedRow();
        cells.forEach((column, cell) -> maker.pack(row, column, cell));
        return row;
    }

    private NavigableMap<Integer, Cell> row(Map<String, Integer> headers) throws IOException {
        NavigableMap<Integer, Cell> row = new TreeMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            parser.nextToken();
            Cell cell = cell();
            if (!cell.isBlank()) {
                row.put(headers.computeIfAbsent(key, name -> headers.size()), cell);
            }
        }
        return row;
    }

    private Cell cell() throws IOException {
        return switch (parser.currentToken()) {
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(parser.getText());
            case VALUE_STRING -> Cell.text(parser.getText());
            case VALUE_TRUE, VALUE_FALSE -> Cell.text(parser.getText());
            case START_ARRAY -> Cell.text(joined());
            case START_OBJECT -> {
                parser.skipChildren();
                yield Cell.error(CellFaults.object());
            }
            default -> Cell.BLANK;
        };
    }

    private static Cell number(String text) {
        if (text.length() > LONGEST_NUMBER) {
            return Cell.error(CellFaults.tooManyDigits(LONGEST_NUMBER));
        }
        BigDecimal number = new BigDecimal(text);
        return Math.abs(number.precision() - number.scale()) > LONGEST_NUMBER
                ? Cell.error(CellFaults.tooLargeOrSmall(text))
                : Cell.number(number);
    }

    private String joined() throws IOException {
        List<String> words = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            words.add(parser.getText());
            parser.skipChildren();
        }
        return String.join("; ", words);
    }

    private void expect(JsonToken found, JsonToken expected) throws JsonParseException {
        if (found != expected) {
            throw new JsonParseException(parser, "a table is an array of objects");
        }
    }
}
