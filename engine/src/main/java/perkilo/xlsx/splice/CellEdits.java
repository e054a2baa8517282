package perkilo.xlsx.splice;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Origin;

/** Changes of cells of one sheet: only their own characters in the sheet's XML change. */
final class CellEdits {

    private final XmlElement data;
    private final XmlEdits edits;
    private final Map<Integer, XmlElement> rows = new TreeMap<>();

    private CellEdits(XmlElement sheet, XmlElement data) {
        this.data = data;
        this.edits = new XmlEdits(sheet);
        int number = 0;
        for (XmlElement row : data.children("row")) {
            String typed = row.get("r");
            number = typed == null ? number + 1 : Integer.parseInt(typed.strip());
            rows.put(number - 1, row);
        }
    }

    /**
     * The XML of a sheet with changes.
     *
     * @throws UnfitPackageException if a cell holds a formula, or the sheet has no cells
     */
    static String applied(XmlElement sheet, List<CellChange> changes) throws UnfitPackageException {
        XmlElement data = sheet.child("sheetData");
        if (data == null) {
            throw new UnfitPackageException(SpliceMessages.noCells());
        }
        Map<Integer, Map<Integer, CellChange>> byRow = new TreeMap<>();
        for (CellChange change : changes) {
            byRow.computeIfAbsent(change.row(), any -> new TreeMap<>()).put(change.column(), change);
        }
        CellEdits cells = new CellEdits(sheet, data);
        Map<Integer, String> fresh = new TreeMap<>();
        for (Map.Entry<Integer, Map<Integer, CellChange>> row : byRow.entrySet()) {
            XmlElement old = cells.rows.get(row.getKey());
            if (old == null) {
                fresh.put(row.getKey(), cells.newRow(row.getKey(), row.getValue()));
            } else {
                cells.change(old, row.getValue());
            }
        }
        cells.insert(fresh);
        return cells.edits.apply();
    }

    /** Inserts rows before the next one that is there, or after the last. */
    private void insert(Map<Integer, String> fresh) {
        Map<XmlElement, StringBuilder> before = new LinkedHashMap<>();
        StringBuilder last = new StringBuilder();
        fresh.forEach((number, xml) -> {
            XmlElement next = rows.entrySet().stream()
                    .filter(row -> row.getKey() > number)
                    .map(Map.Entry::getValue)
                    .findFirst()
                    .orElse(null);
            (next == null ? last : before.computeIfAbsent(next, any -> new StringBuilder())).append(xml);
        });
        before.forEach((next, xml) -> edits.insert(next.start(), xml.toString()));
        if (!last.isEmpty()) {
            edits.append(data, last.toString());
        }
    }

    private String newRow(int number, Map<Integer, CellChange> changes) {
        StringBuilder xml = new StringBuilder();
        changes.forEach((column, change) -> xml.append(cell(change, styleAbove(number, column))));
        String tag = data.prefix() + "row";
        return "<" + tag + " r=\"" + (number + 1) + "\">" + xml + "</" + tag + ">";
    }

    /** The style of the nearest cell above in the column; null for none. */
    private @Nullable String styleAbove(int number, int column) {
        String style = null;
        for (Map.Entry<Integer, XmlElement> row : rows.entrySet()) {
            XmlElement cell = row.getKey() < number ? cells(row.getValue()).get(column) : null;
            style = cell == null ? style : cell.get("s");
        }
        return style;
    }

    private static Map<Integer, XmlElement> cells(XmlElement row) {
        Map<Integer, XmlElement> cells = new TreeMap<>();
        int column = -1;
        for (XmlElement cell : row.children("c")) {
            String place = cell.get("r");
            column = place == null ? column + 1 : column(place);
            cells.put(column, cell);
        }
        return cells;
    }

    private static int column(String place) {
        int column = 0;
        for (char letter : place.strip().toUpperCase(Locale.ROOT).toCharArray()) {
            if (letter >= 'A' && letter <= 'Z') {
                column = column * 26 + letter - 'A' + 1;
            }
        }
        return column - 1;
    }

    private void change(XmlElement row, Map<Integer, CellChange> changes) throws UnfitPackageException {
        Map<Integer, XmlElement> cells = cells(row);
        for (CellChange change : changes.values()) {
            XmlElement old = cells.get(change.column());
            if (old != null) {
                if (old.child("f") != null) {
                    throw new UnfitPackageException(SpliceMessages.holdsFormula(change.where()));
                }
                edits.insert(old.start(), cell(change, old.get("s")));
                edits.remove(old);
                continue;
            }
            String xml = cell(change, styleAbove(change.row(), change.column()));
            List<XmlElement> next = new ArrayList<>();
            cells.forEach((column, cell) -> {
                if (column > change.column()) {
                    next.add(cell);
                }
            });
            if (next.isEmpty()) {
                edits.append(row, xml);
            } else {
                edits.insert(next.get(0).start(), xml);
            }
        }
    }

    private String cell(CellChange change, @Nullable String style) {
        String prefix = data.prefix();
        Map<String, String> attributes = new LinkedHashMap<>();
        attributes.put("r", Origin.columnName(change.column()) + (change.row() + 1));
        if (style != null) {
            attributes.put("s", style);
        }
        BigDecimal number = change.number();
        if (number != null) {
            return XmlText.openTag(prefix + "c", attributes, false) + "<" + prefix + "v>" + number.toPlainString()
                    + "</" + prefix + "v></" + prefix + "c>";
        }
        if (change.words().isEmpty()) {
            return XmlText.openTag(prefix + "c", attributes, true);
        }
        attributes.put("t", "inlineStr");
        return XmlText.openTag(prefix + "c", attributes, false) + "<" + prefix + "is><" + prefix
                + "t xml:space=\"preserve\">" + XmlText.escaped(change.words()) + "</" + prefix + "t></" + prefix
                + "is></"
                + prefix + "c>";
    }
}
