package perkilo.xlsx.author;

import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeSet;
import perkilo.sheet.Chart;
import perkilo.sheet.ResultSheet;

/** How a sheet is printed: A4, one page wide, with the sheet's name and the page number in the footer. */
final class PrintSetup {

    private static final int A4 = 9;
    private static final double SIDE_INCHES = 0.5;
    private static final double TOP_INCHES = 0.6;
    private static final double BOTTOM_INCHES = 0.75;
    private static final double HEADER_INCHES = 0.3;
    private static final double FOOTER_INCHES = 0.35;

    /** The scale in per cent at which a landscape page holds about 200 characters: small, but legible. */
    private static final int SCALE_SIDE_BY_SIDE = 50;

    private static final double PAGE_SHORT_INCHES = 8.27;
    private static final double PAGE_LONG_INCHES = 11.69;
    private static final int POINTS_PER_INCH = 72;

    /**
     * The width of one character of a column in print; from memory: a digit of the usual font is 7 dots wide at 96 dots
     * per inch.
     */
    private static final double POINTS_PER_CHARACTER = 5.25;

    private static final double POINTS_OF_MARGIN = 3.75;

    /** The share of a page that can surely be used; printers and office suites differ a little in how much fits. */
    private static final double SURELY_USED = 0.97;

    /** The last column and the last row that a sheet can have, from zero. */
    private static final int LAST_COLUMN = 16_383;

    private static final int LAST_ROW = 1_048_575;

    private final ResultSheet sheet;
    private final PartXml xml;

    PrintSetup(ResultSheet sheet, PartXml xml) {
        this.sheet = sheet;
        this.xml = xml;
    }

    /** Writes whether the sheet is scaled to fit its pages; belongs at the sheet's beginning. */
    void fit() {
        xml.open("sheetPr")
                .leaf("pageSetUpPr", "fitToPage", sheet.layout().pages() == null)
                .close();
    }

    /** Writes margins, page, footer and breaks; belongs after the cells. */
    void write() {
        xml.leaf(
                "pageMargins",
                "left",
                SIDE_INCHES,
                "right",
                SIDE_INCHES,
                "top",
                TOP_INCHES,
                "bottom",
                BOTTOM_INCHES,
                "header",
                HEADER_INCHES,
                "footer",
                FOOTER_INCHES);
        xml.open("pageSetup", "paperSize", A4);
        ResultSheet.Pages pages = sheet.layout().pages();
        if (pages == null) {
            xml.set("fitToWidth", 1).set("fitToHeight", sheet.layout().onePage() ? 1 : 0);
        } else {
            xml.set("scale", SCALE_SIDE_BY_SIDE);
        }
        xml.set("orientation", sheet.layout().landscape() ? "landscape" : "portrait")
                .close();
        if (sheet.layout().numbered()) {
            xml.open("headerFooter").words("oddFooter", "&L&A&R&P / &N").close();
        }
        if (sheet.layout().onePage()) {
            return;
        }
        breaks(
                "rowBreaks",
                pages == null
                        ? PageBreaks.of(sheet, pagePoints())
                        : sheet.layout().pageBreaksBefore(),
                LAST_COLUMN);
        breaks("colBreaks", pages == null ? List.of() : pages.breaksBefore(), LAST_ROW);
    }

    /** The height of rows, in points, that a page holds once the sheet is scaled to the page's width. */
    private double pagePoints() {
        double across = sheet.layout().landscape() ? PAGE_LONG_INCHES : PAGE_SHORT_INCHES;
        double down = sheet.layout().landscape() ? PAGE_SHORT_INCHES : PAGE_LONG_INCHES;
        double room = (across - 2 * SIDE_INCHES) * POINTS_PER_INCH;
        double scale = Math.min(1, room / wide());
        return (down - TOP_INCHES - BOTTOM_INCHES) * POINTS_PER_INCH / scale * SURELY_USED;
    }

    /** The width in points of all columns that hold anything. */
    private double wide() {
        int last = 0;
        for (SortedMap<Integer, ResultSheet.Cell> row : sheet.cells().values()) {
            last = Math.max(last, row.lastKey());
        }
        for (Chart chart : sheet.charts()) {
            last = Math.max(last, chart.place().right());
        }
        double points = 0;
        for (int column = 0; column <= last; column++) {
            int characters = sheet.columnWidths().getOrDefault(column, TextFit.USUAL_WIDTH);
            points += characters * POINTS_PER_CHARACTER + POINTS_OF_MARGIN;
        }
        return points;
    }

    private void breaks(String element, List<Integer> before, int last) {
        SortedSet<Integer> places = new TreeSet<>(before);
        places.remove(0);
        if (places.isEmpty()) {
            return;
        }
        xml.open(element, "count", places.size(), "manualBreakCount", places.size());
        for (int place : places) {
            xml.leaf("brk", "id", place, "max", last, "man", true);
        }
        xml.close();
    }
}
