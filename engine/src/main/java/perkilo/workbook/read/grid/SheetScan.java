package perkilo.workbook.read.grid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.NavigableMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.poi.ss.util.CellRangeAddress;
import org.jspecify.annotations.Nullable;

/** One sheet of a workbook, read from beginning to end. */
final class SheetScan {

    private static final int MOST_COLUMNS = 16_384;

    private final XMLStreamReader xml;
    private final ScannedCells values;
    private final NavigableMap<Integer, NavigableMap<Integer, Cell>> rows = new TreeMap<>();
    private final TreeSet<Integer> hidden = new TreeSet<>();
    private final List<Grid.Block> merged = new ArrayList<>();
    private @Nullable Cell[] row = new Cell[32];
    private int rowNumber = -1;
    private int used;

    SheetScan(XMLStreamReader xml, ScannedCells values) {
        this.xml = xml;
        this.values = values;
    }

    /** Whether any row stands on the sheet; reads no further than to the first. */
    static boolean hasRows(XMLStreamReader xml) throws XMLStreamException {
        while (xml.hasNext()) {
            if (xml.next() == XMLStreamConstants.START_ELEMENT
                    && xml.getLocalName().equals("row")) {
                return true;
            }
        }
        return false;
    }

    void read() throws XMLStreamException {
        while (xml.hasNext()) {
            if (xml.next() == XMLStreamConstants.START_ELEMENT) {
                switch (xml.getLocalName()) {
                    case "row" -> row();
                    case "mergeCell" -> merged.add(block(xml.getAttributeValue(null, "ref")));
                    default -> {}
                }
            }
        }
    }

    NavigableMap<Integer, NavigableMap<Integer, Cell>> rows() {
        return rows;
    }

    /** Rows that are hidden and hold something, from one. */
    SortedSet<Integer> hidden() {
        return hidden;
    }

    List<Grid.Block> merged() {
        return merged;
    }

    private void row() throws XMLStreamException {
        String number = xml.getAttributeValue(null, "r");
        rowNumber = number == null ? rowNumber + 1 : Integer.parseInt(number) - 1;
        String hiding = xml.getAttributeValue(null, "hidden");
        boolean unseen = "1".equals(hiding) || "true".equals(hiding);
        Arrays.fill(row, 0, used, null);
        used = 0;
        int column = -1;
        while (!ends("row")) {
            if (xml.getEventType() == XMLStreamConstants.START_ELEMENT
                    && xml.getLocalName().equals("c")) {
                String reference = xml.getAttributeValue(null, "r");
                column = reference == null ? column + 1 : column(reference);
                put(column, values.read(xml));
            }
        }
        NavigableMap<Integer, Cell> packed = PackedRow.of(row, used);
        if (packed.isEmpty()) {
            return;
        }
        if (unseen) {
            hidden.add(rowNumber + 1);
        } else {
            rows.put(rowNumber, packed);
        }
    }

    private void put(int column, Cell cell) {
        if (column >= row.length) {
            row = Arrays.copyOf(row, Math.max(column + 1, row.length * 2));
        }
        row[column] = cell;
        used = Math.max(used, column + 1);
    }

    private boolean ends(String element) throws XMLStreamException {
        return xml.next() == XMLStreamConstants.END_ELEMENT
                && xml.getLocalName().equals(element);
    }

    private static int column(String reference) {
        int column = 0;
        for (int at = 0; at < reference.length(); at++) {
            char letter = reference.charAt(at);
            if (letter < 'A' || letter > 'Z') {
                break;
            }
            column = column * 26 + (letter - 'A' + 1);
        }
        if (column == 0 || column > MOST_COLUMNS) {
            throw new IllegalArgumentException(reference);
        }
        return column - 1;
    }

    private static Grid.Block block(String reference) {
        CellRangeAddress range = CellRangeAddress.valueOf(reference);
        return new Grid.Block(range.getFirstRow(), range.getLastRow(), range.getFirstColumn(), range.getLastColumn());
    }
}
