package perkilo.xlsx.author;

import java.util.List;
import java.util.function.UnaryOperator;
import perkilo.sheet.Chart;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetNames;

/** The part of one sheet, with its elements in the order that the standard requires. */
final class SheetPart {

    /** A column's width is counted in 1/256 of a character. */
    private static final int PER_CHARACTER = 256;

    /** The blank on both sides of a cell's words, in 1/256 of a character. */
    private static final int MARGIN = 182;

    private static final int WIDEST = 255 * PER_CHARACTER;

    private final ResultSheet sheet;
    private final StyleSheet styles;
    private final Links links;
    private final UnaryOperator<String> names;
    private final PartXml xml =
            new PartXml("worksheet", "xmlns", StandardNames.MAIN, "xmlns:r", StandardNames.RELATIONSHIPS);

    SheetPart(ResultSheet sheet, StyleSheet styles, Links links, UnaryOperator<String> names) {
        this.sheet = sheet;
        this.styles = styles;
        this.links = links;
        this.names = names;
    }

    /** Writes the sheet, its drawing and its charts. */
    void write(String part, ChartValues values, PartList parts) {
        Relationships relationships = new Relationships(part);
        PrintSetup print = new PrintSetup(sheet, xml);
        print.fit();
        view();
        xml.leaf("sheetFormatPr", "defaultRowHeight", TextFit.USUAL_POINTS, "customHeight", true);
        columns();
        Hyperlinks clicks = new Hyperlinks(links);
        new SheetCells(sheet, styles, clicks, names).write(xml);
        filter();
        Highlights.write(sheet.highlights(), styles, xml);
        DropDowns.write(sheet.dropDowns(), names, xml);
        clicks.write(xml, relationships);
        print.write();
        List<Chart> charts = sheet.charts();
        if (!charts.isEmpty()) {
            xml.leaf("drawing", "r:id", relationships.add("drawing", DrawingPart.write(charts, values, parts)));
        }
        parts.add(part, StandardNames.SHEET_TYPE, xml.bytes(), relationships);
    }

    private void view() {
        xml.open("sheetViews").open("sheetView", "showGridLines", false, "workbookViewId", 0);
        if (sheet.layout().frozenRows() > 0 || sheet.layout().frozenColumns() > 0) {
            pane();
        }
        xml.close(2);
    }

    private void pane() {
        xml.open("pane");
        if (sheet.layout().frozenColumns() > 0) {
            xml.set("xSplit", sheet.layout().frozenColumns());
        }
        if (sheet.layout().frozenRows() > 0) {
            xml.set("ySplit", sheet.layout().frozenRows());
        }
        String active = (sheet.layout().frozenRows() > 0 ? "bottom" : "top")
                + (sheet.layout().frozenColumns() > 0 ? "Right" : "Left");
        xml.set(
                "topLeftCell",
                SheetNames.cell(sheet.layout().frozenRows(), sheet.layout().frozenColumns()));
        xml.set("activePane", active).set("state", "frozen").close();
        xml.leaf("selection", "pane", active);
    }

    private void columns() {
        if (sheet.columnWidths().isEmpty()) {
            return;
        }
        xml.open("cols");
        sheet.columnWidths()
                .forEach((column, characters) -> xml.leaf(
                        "col", "min", column + 1, "max", column + 1, "width", width(characters), "customWidth", true));
        xml.close();
    }

    private static double width(int characters) {
        return (double) Math.min(characters * PER_CHARACTER + MARGIN, WIDEST) / PER_CHARACTER;
    }

    private void filter() {
        String filter = sheet.layout().filter();
        if (filter != null) {
            xml.leaf("autoFilter", "ref", filter);
        }
    }
}
