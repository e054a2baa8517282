package perkilo.workbook.author;

import java.util.List;
import perkilo.report.ResultSheet;

/** How a sheet is printed: A4, as wide as one page, its name and the page at the foot. */
final class PrintSetup {

    private static final int A4 = 9;
    private static final double SIDE_INCHES = 0.5;
    private static final double TOP_INCHES = 0.6;
    private static final double BOTTOM_INCHES = 0.75;
    private static final double HEADER_INCHES = 0.3;
    private static final double FOOTER_INCHES = 0.35;

    /** What lets a page across hold some 200 characters in print: small, but legible. */
    private static final int SCALE_SIDE_BY_SIDE = 50;

    /** The last column and the last row that a sheet can have, from zero. */
    private static final int LAST_COLUMN = 16_383;

    private static final int LAST_ROW = 1_048_575;

    private final ResultSheet sheet;
    private final Xml xml;

    PrintSetup(ResultSheet sheet, Xml xml) {
        this.sheet = sheet;
        this.xml = xml;
    }

    /** Says whether the sheet is made to fit its pages; stands at the sheet's beginning. */
    void fit() {
        xml.open("sheetPr")
                .leaf("pageSetUpPr", "fitToPage", sheet.pages() == null)
                .close();
    }

    /** Writes margins, page, foot and breaks; stands behind the cells. */
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
        ResultSheet.Pages pages = sheet.pages();
        if (pages == null) {
            xml.set("fitToWidth", 1).set("fitToHeight", 0);
        } else {
            xml.set("scale", SCALE_SIDE_BY_SIDE);
        }
        xml.set("orientation", sheet.landscape() ? "landscape" : "portrait").close();
        xml.open("headerFooter").words("oddFooter", "&L&A&R&P / &N").close();
        breaks("rowBreaks", sheet.pageBreaksBefore(), LAST_COLUMN);
        breaks("colBreaks", pages == null ? List.of() : pages.breaksBefore(), LAST_ROW);
    }

    private void breaks(String element, List<Integer> before, int last) {
        List<Integer> places =
                before.stream().filter(place -> place > 0).sorted().distinct().toList();
        if (places.isEmpty()) {
            return;
        }
        xml.open(element, "count", places.size(), "manualBreakCount", places.size());
        places.forEach(place -> xml.leaf("brk", "id", place, "max", last, "man", true));
        xml.close();
    }
}
