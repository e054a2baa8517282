package perkilo.xlsx.author;

import java.util.Map;
import java.util.SortedMap;
import java.util.function.UnaryOperator;
import perkilo.origin.Decimals;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.ResultSheet.Cell;
import perkilo.sheet.SheetNames;

/** The cells of one sheet: words inline, numbers, and formulas with their values. */
final class SheetCells {

    /** The longest formula that office suites read. */
    private static final int LONGEST_FORMULA = 8192;

    private final ResultSheet sheet;
    private final StyleSheet styles;
    private final Hyperlinks clicks;
    private final UnaryOperator<String> names;
    private final TextFit fit;

    /**
     * The cells of a sheet.
     *
     * @param clicks receives every cell that has a link
     */
    SheetCells(ResultSheet sheet, StyleSheet styles, Hyperlinks clicks, UnaryOperator<String> names) {
        this.sheet = sheet;
        this.styles = styles;
        this.clicks = clicks;
        this.names = names;
        this.fit = new TextFit(sheet);
    }

    void write(PartXml xml) {
        xml.open("sheetData");
        for (Map.Entry<Integer, SortedMap<Integer, Cell>> row : sheet.cells().entrySet()) {
            xml.open("row", "r", row.getKey() + 1);
            fit.height(row.getKey()).ifPresent(points -> xml.set("ht", points).set("customHeight", true));
            row.getValue().forEach((column, cell) -> write(row.getKey(), column, cell, xml));
            xml.close();
        }
        xml.close();
    }

    private void write(int row, int column, Cell cell, PartXml xml) {
        String place = SheetNames.cell(row, column);
        boolean linked = clicks.add(place, cell.link());
        xml.open("c", "r", place, "s", styles.number(look(row, column, cell, linked)));
        write(cell.content(), xml);
        xml.close();
    }

    private CellLook look(int row, int column, Cell cell, boolean linked) {
        boolean quoted = cell.content() instanceof ResultSheet.Text text && CellText.looksLikeFormula(text.text());
        return new CellLook(
                cell.look(), cell.format(), quoted, fit.isWrapped(row, column), linked, placeOf(row, column, cell));
    }

    private CellLook.Place placeOf(int row, int column, Cell cell) {
        if (!(cell.content() instanceof ResultSheet.Text || cell.content() instanceof ResultSheet.Sentence)) {
            boolean words = cell.look() == Look.LETTER || cell.look() == Look.LABEL; // a day that names a row
            return words ? CellLook.Place.LEFT : CellLook.Place.USUAL;
        }
        if (cell.look() == Look.HEADER && fit.standsOverNumbers(row, column)) {
            return CellLook.Place.RIGHT;
        }
        return fit.followsNumber(row, column) ? CellLook.Place.INDENTED : CellLook.Place.USUAL;
    }

    private void write(ResultSheet.Content content, PartXml xml) {
        if (content instanceof ResultSheet.Text text) {
            xml.set("t", "inlineStr").open("is");
            words(CellText.storable(text.text()), xml);
            xml.close();
        } else if (content instanceof ResultSheet.Value value) {
            write(value.expr(), xml);
        } else if (content instanceof ResultSheet.Sentence sentence) {
            xml.set("t", "str");
            formula(sentence.formula(names), xml);
            xml.words("v", CellText.storable(sentence.text()));
        }
    }

    private static void words(String words, PartXml xml) {
        if (words.equals(words.strip())) {
            xml.words("t", words);
        } else {
            xml.words("t", words, "xml:space", "preserve");
        }
    }

    private void write(Expr expr, PartXml xml) {
        if (expr.isLive()) {
            formula(expr.formula(names), xml);
        }
        xml.words("v", Decimals.plain(expr.value()));
    }

    /** Writes a formula, unless it is too long for office suites; the cell then holds its value only. */
    private static void formula(String formula, PartXml xml) {
        if (formula.length() <= LONGEST_FORMULA) {
            xml.words("f", formula);
        }
    }
}
