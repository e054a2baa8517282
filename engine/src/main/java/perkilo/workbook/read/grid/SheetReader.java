package perkilo.workbook.read.grid;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.apache.poi.ss.util.CellRangeAddress;
import perkilo.origin.Finding;
import perkilo.origin.Origin;

/** Reads one sheet in a single pass over its part. */
final class SheetReader {

    private static final int ROWS = 1 << 20;
    private static final int COLUMNS = 1 << 14;
    private static final int LETTERS = 26;
    private static final Pattern OTHER_BOOK = Pattern.compile("\\[\\d+]");

    private final Path file;
    private final String name;
    private final CellMaker maker;
    private final MissingValues missing;
    private final boolean linksOut;
    private final boolean ofBook;

    private final NavigableMap<Integer, NavigableMap<Integer, Cell>> rows = new TreeMap<>();
    private final List<Grid.Block> merged = new ArrayList<>();
    private final BitSet hiddenColumns = new BitSet();
    private final BitSet hiddenRows = new BitSet();
    private final List<Origin> linked = new ArrayList<>();
    private final Set<String> linkedGroups = new HashSet<>();

    private char[] columns = new char[64];
    private Cell[] cells = new Cell[64];
    private int count;
    private int row = -1;

    /**
     * Ready to read.
     *
     * @param linksOut whether formulas may refer to other workbooks
     * @param ofBook whether formulas in the results can refer to its cells
     */
    SheetReader(Path file, String name, CellMaker maker, MissingValues missing, boolean linksOut, boolean ofBook) {
        this.file = file;
        this.name = name;
        this.maker = maker;
        this.missing = missing;
        this.linksOut = linksOut;
        this.ofBook = ofBook;
    }

    /** The sheet, with what was found about it as a whole added to the findings. */
    Grid read(Xml xml, List<Finding> findings) throws IOException {
        while (xml.nextElement()) {
            switch (xml.name()) {
                case "sheetData" -> rows(xml);
                case "col" -> column(xml);
                case "mergeCell" -> merge(xml.attribute("ref", ""));
                case "conditionalFormatting", "dataValidations", "extLst" -> xml.skip();
                default -> {}
            }
        }
        report(findings);
        return new Grid(fileName(), name, name, rows, new MergedBlocks(merged), new TreeMap<>(), hiddenColumns, ofBook);
    }

    private String fileName() {
        return String.valueOf(file.getFileName());
    }

    private void column(Xml xml) {
        if (xml.isOn("hidden") || xml.attribute("width", "").equals("0")) {
            int first = Math.max(1, xml.number("min", 1));
            int last = Math.min(COLUMNS, xml.number("max", first));
            hiddenColumns.set(first - 1, Math.max(first - 1, last));
        }
    }

    private void merge(String reference) {
        try {
            CellRangeAddress range = CellRangeAddress.valueOf(reference);
            merged.add(new Grid.Block(
                    range.getFirstRow(), range.getLastRow(), range.getFirstColumn(), range.getLastColumn()));
        } catch (RuntimeException e) {
            return; // a reference that makes no sense merges nothing
        }
    }

    private void rows(Xml xml) throws IOException {
        int inside = xml.depth();
        while (xml.nextElementInside(inside)) {
            if (xml.isAt("row")) {
                row = xml.number("r", row + 2) - 1;
                if (row < 0 || row >= ROWS) {
                    throw beyond("row %,d".formatted(row + 1));
                }
                boolean hidden = xml.isOn("hidden");
                cells(xml);
                keep(hidden);
            } else {
                xml.skip();
            }
        }
    }

    private void cells(Xml xml) throws IOException {
        int inside = xml.depth();
        int column = -1;
        count = 0;
        while (xml.nextElementInside(inside)) {
            if (!xml.isAt("c")) {
                xml.skip();
                continue;
            }
            String reference = xml.attribute("r", "");
            column = reference.isEmpty() ? column + 1 : columnOf(reference);
            if (column < 0 || column >= COLUMNS) {
                throw beyond("column %,d".formatted(column + 1));
            }
            Cell cell = cell(xml, column);
            if (!cell.isBlank()) {
                add(column, cell);
            }
        }
    }

    private static int columnOf(String reference) {
        int column = 0;
        for (int i = 0; i < reference.length() && column <= COLUMNS; i++) {
            char c = reference.charAt(i);
            if (c >= 'A' && c <= 'Z') {
                column = column * LETTERS + c - 'A' + 1;
            } else if (c >= 'a' && c <= 'z') {
                column = column * LETTERS + c - 'a' + 1;
            } else {
                break;
            }
        }
        return column - 1;
    }

    private Cell cell(Xml xml, int column) throws IOException {
        String type = xml.attribute("t", "");
        int style = xml.number("s", 0);
        int inside = xml.depth();
        String value = "";
        boolean formula = false;
        boolean saved = false;
        while (xml.nextElementInside(inside)) {
            switch (xml.name()) {
                case "v" -> {
                    value = xml.text();
                    saved = true;
                }
                case "is" -> value = SharedTexts.words(xml);
                case "f" -> {
                    formula = true;
                    noteLink(xml, column);
                }
                default -> xml.skip();
            }
        }
        if (!value.isEmpty()) {
            return type.equals("inlineStr") ? Cell.text(value) : maker.of(type, value, style);
        }
        boolean emptyText = saved && type.equals("str");
        return formula && !emptyText ? missing.at(name, row, column, style, maker) : Cell.BLANK;
    }

    /** Notes a formula that refers to another workbook; of a group that shares one, only the first spells it. */
    private void noteLink(Xml xml, int column) throws IOException {
        String group = xml.attribute("t", "").equals("shared") ? xml.attribute("si", "") : "";
        String words = xml.text();
        if (!linksOut) {
            return;
        }
        boolean linksHere = OTHER_BOOK.matcher(words).find();
        if (linksHere && !group.isEmpty()) {
            linkedGroups.add(group);
        }
        if (linksHere || linkedGroups.contains(group)) {
            linked.add(place(column));
        }
    }

    private Origin place(int column) {
        return new Origin(fileName(), name, Grid.columnName(column) + (row + 1));
    }

    private void add(int column, Cell cell) {
        if (count == cells.length) {
            columns = Arrays.copyOf(columns, count * 2);
            cells = Arrays.copyOf(cells, count * 2);
        }
        columns[count] = (char) column;
        cells[count] = cell;
        count++;
    }

    private void keep(boolean hidden) {
        if (count == 0) {
            return;
        }
        if (hidden) {
            hiddenRows.set(row);
        } else if (isRising() && !rows.containsKey(row)) {
            rows.put(row, RowCells.of(columns, cells, count));
        } else {
            keepOneByOne();
        }
    }

    private boolean isRising() {
        for (int i = 1; i < count; i++) {
            if (columns[i] <= columns[i - 1]) {
                return false;
            }
        }
        return true;
    }

    /** A row out of order; of a cell that is there twice nobody knows which one a person sees. */
    private void keepOneByOne() {
        NavigableMap<Integer, Cell> all = new TreeMap<>(rows.getOrDefault(row, new TreeMap<>()));
        for (int i = 0; i < count; i++) {
            all.merge(
                    (int) columns[i],
                    cells[i],
                    (one, other) -> Cell.error("there twice in the file, which is damaged; type it again"));
        }
        rows.put(row, all);
    }

    private UnreadableFileException beyond(String what) {
        return new UnreadableFileException(
                file,
                "is damaged: its sheet \"%s\" has %s, beyond the last one; open it in your spreadsheet program and save it again"
                        .formatted(name, what));
    }

    private void report(List<Finding> findings) {
        if (!hiddenRows.isEmpty()) {
            findings.add(Finding.warning(
                    new Origin(fileName(), name, ""),
                    "%s hidden, perhaps by a filter, and not read; show all rows if they count"
                            .formatted(rowsAre(hiddenRows))));
        }
        if (!linked.isEmpty()) {
            String others = linked.size() == 1 ? "" : " (and %d more cells here)".formatted(linked.size() - 1);
            findings.add(Finding.warning(
                    linked.get(0),
                    "the formula refers to another workbook%s; the value that was last saved is used"
                            .formatted(others)));
        }
    }

    private static String rowsAre(BitSet hidden) {
        int first = hidden.nextSetBit(0) + 1;
        int many = hidden.cardinality();
        return many == 1
                ? "row " + first + " is"
                : "%d rows between %d and %d are".formatted(many, first, hidden.length());
    }
}
