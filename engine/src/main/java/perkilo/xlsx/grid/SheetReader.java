package perkilo.xlsx.grid;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
    private final SavedValues saved;
    private final boolean linksOut;
    private final boolean ofBook;

    private final GridRows.Builder rows;
    private final PackedRow cells = new PackedRow();
    private final List<Grid.Block> merged = new ArrayList<>();
    private final BitSet hiddenColumns = new BitSet();
    private final BitSet hiddenRows = new BitSet();
    private final List<Origin> linked = new ArrayList<>();
    private final Set<String> linkedGroups = new HashSet<>();
    private final Map<Integer, BitSet> struck = new HashMap<>();
    private final boolean anyStruck;

    private int row = -1;
    private String reference = "";
    private String type = "";
    private int style;

    /**
     * Ready to read.
     *
     * @param saved whether the values of formulas are trusted
     * @param linksOut whether formulas may refer to other workbooks
     * @param ofBook whether formulas in the results can refer to its cells
     */
    SheetReader(
            Path file,
            String name,
            CellMaker maker,
            MissingValues missing,
            SavedValues saved,
            boolean linksOut,
            boolean ofBook) {
        this.file = file;
        this.name = name;
        this.maker = maker;
        this.missing = missing;
        this.saved = saved;
        this.anyStruck = maker.formats().anyStruck();
        this.linksOut = linksOut;
        this.ofBook = ofBook;
        this.rows = new GridRows.Builder(maker);
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
        return new Grid(fileName(), name, name, rows.rows(), new MergedBlocks(merged), hiddenColumns, ofBook, aside());
    }

    private Grid.Aside aside() {
        return hiddenRows.isEmpty() && struck.isEmpty() ? Grid.Aside.NONE : new Grid.Aside(hiddenRows, struck);
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
                    throw new UnreadableFileException(FileMessages.rowBeyondLast(file, name, row + 1));
                }
                boolean hidden = xml.isOn("hidden");
                cells(xml);
                keep(hidden);
                xml.keeps(cells.size());
            } else {
                xml.skip();
            }
        }
    }

    private void cells(Xml xml) throws IOException {
        int inside = xml.depth();
        int column = -1;
        cells.clear();
        while (xml.nextElementInside(inside)) {
            if (!xml.isAt("c")) {
                xml.skip();
                continue;
            }
            attributes(xml);
            column = reference.isEmpty() ? column + 1 : columnOf(reference);
            if (column < 0 || column >= COLUMNS) {
                throw new UnreadableFileException(FileMessages.columnBeyondLast(file, name, column + 1));
            }
            cell(xml, column);
        }
    }

    /** Reads a cell's attributes in one pass, for speed: a long sheet has a million cells. */
    private void attributes(Xml xml) {
        reference = "";
        type = "";
        style = 0;
        for (int i = xml.attributes() - 1; i >= 0; i--) {
            switch (xml.attributeName(i)) {
                case "r" -> reference = xml.attributeValue(i);
                case "t" -> type = xml.attributeValue(i);
                case "s" -> style = Xml.whole(xml.attributeValue(i), 0);
                default -> {}
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

    private void cell(Xml xml, int column) throws IOException {
        int inside = xml.depth();
        String value = "";
        boolean formula = false;
        boolean hasValue = false;
        while (xml.nextElementInside(inside)) {
            switch (xml.name()) {
                case "v" -> {
                    value = xml.text();
                    hasValue = true;
                }
                case "is" -> value = SharedTexts.words(xml);
                case "f" -> {
                    formula = true;
                    noteLink(xml, column);
                }
                default -> xml.skip();
            }
        }
        if (formula && hasValue) {
            saved.note(type, value);
        }
        if (anyStruck && maker.formats().isStruck(style)) {
            struck.computeIfAbsent(row, any -> new BitSet()).set(column);
        }
        boolean emptyText = hasValue && type.equals("str");
        if (formula && hasValue && saved.areDoubtful()) {
            maker.pack(cells, column, missing.again(name, row, column, style, maker));
        } else if (!value.isEmpty()) {
            pack(column, value);
        } else if (formula && !emptyText) {
            maker.pack(cells, column, missing.at(name, row, column, style, maker));
        }
    }

    private void pack(int column, String value) {
        if (type.equals("inlineStr")) {
            maker.text(cells, column, value);
        } else {
            maker.pack(cells, column, type, value, style);
        }
    }

    /**
     * Notes a formula that refers to another workbook. In a group that shares a formula, only the first cell holds its
     * text.
     */
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
        return Origin.ofCell(fileName(), name, row, column);
    }

    private void keep(boolean hidden) {
        if (cells.count() == 0) {
            return;
        }
        if (hidden) {
            hiddenRows.set(row);
        } else {
            rows.add(row, cells);
        }
    }

    private void report(List<Finding> findings) {
        if (!hiddenRows.isEmpty()) {
            Origin sheet = new Origin(fileName(), name, "");
            findings.add(Finding.warning(sheet, hidden(hiddenRows)));
        }
        if (!linked.isEmpty()) {
            findings.add(Finding.warning(
                    linked.get(0),
                    linked.size() == 1
                            ? FileMessages.linkedFormula()
                            : FileMessages.linkedFormulas(linked.size() - 1)));
        }
    }

    private static String hidden(BitSet rows) {
        int first = rows.nextSetBit(0) + 1;
        int many = rows.cardinality();
        return many == 1 ? FileMessages.hiddenRow(first) : FileMessages.hiddenRows(many, first, rows.length());
    }
}
