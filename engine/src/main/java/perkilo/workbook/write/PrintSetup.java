package perkilo.workbook.write;

import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PaperSize;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFPrintSetup;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import perkilo.report.ResultSheet;

/** How a sheet is printed: A4, as wide as one page, the frozen rows on each page, its name and the page at the foot. */
final class PrintSetup {

    private static final double SIDE_INCHES = 0.5;
    private static final double TOP_INCHES = 0.6;
    private static final double BOTTOM_INCHES = 0.75;
    private static final double FOOTER_INCHES = 0.35;

    /** What lets a page across hold some 200 characters in print: small, but legible. */
    private static final short SCALE_SIDE_BY_SIDE = 50;

    private PrintSetup() {}

    static void apply(ResultSheet sheet, XSSFSheet target) {
        target.setFitToPage(true);
        XSSFPrintSetup setup = target.getPrintSetup();
        setup.setPaperSize(PaperSize.A4_PAPER);
        setup.setFitWidth((short) 1);
        setup.setFitHeight((short) 0);
        setup.setLandscape(sheet.landscape());
        margins(target);
        target.getFooter().setLeft("&A");
        target.getFooter().setRight("&P / &N");
        ResultSheet.Pages pages = sheet.pages();
        if (pages != null) {
            sideBySide(pages, target);
        } else if (sheet.frozenRows() > 0) {
            target.setRepeatingRows(new CellRangeAddress(0, sheet.frozenRows() - 1, -1, -1));
        }
        sheet.pageBreaksBefore().stream().filter(row -> row > 0).forEach(row -> target.setRowBreak(row - 1));
    }

    private static void sideBySide(ResultSheet.Pages pages, XSSFSheet target) {
        target.setFitToPage(false);
        target.getPrintSetup().setScale(SCALE_SIDE_BY_SIDE);
        target.setRepeatingRows(new CellRangeAddress(pages.headRow(), pages.headRow(), -1, -1));
        target.setRepeatingColumns(new CellRangeAddress(-1, -1, 0, pages.headColumns() - 1));
        pages.breaksBefore().forEach(column -> target.setColumnBreak(column - 1));
        target.getWorkbook()
                .setPrintArea(target.getWorkbook().getSheetIndex(target), 0, pages.lastColumn(), 0, pages.lastRow());
    }

    private static void margins(XSSFSheet target) {
        target.setMargin(PageMargin.LEFT, SIDE_INCHES);
        target.setMargin(PageMargin.RIGHT, SIDE_INCHES);
        target.setMargin(PageMargin.TOP, TOP_INCHES);
        target.setMargin(PageMargin.BOTTOM, BOTTOM_INCHES);
        target.setMargin(PageMargin.FOOTER, FOOTER_INCHES);
    }
}
