package perkilo.workbook.write;

import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import perkilo.report.ResultSheet;

/** What a sheet looks like on the screen, apart from its cells. */
final class SheetLayout {

    /** A column's width is counted in 1/256 of a character. */
    private static final int PER_CHARACTER = 256;

    /** The blank at both sides of a cell's words. */
    private static final int MARGIN = 182;

    private static final int WIDEST = 255 * PER_CHARACTER;

    private SheetLayout() {}

    static void apply(ResultSheet sheet, XSSFSheet target) {
        sheet.columnWidths()
                .forEach((column, characters) ->
                        target.setColumnWidth(column, Math.min(characters * PER_CHARACTER + MARGIN, WIDEST)));
        if (sheet.frozenRows() > 0 || sheet.frozenColumns() > 0) {
            target.createFreezePane(sheet.frozenColumns(), sheet.frozenRows());
        }
        String filter = sheet.filter();
        if (filter != null) {
            target.setAutoFilter(CellRangeAddress.valueOf(filter));
        }
        target.setDefaultRowHeightInPoints(TextFit.USUAL_POINTS);
        target.setDisplayGridlines(false);
        target.setSelected(false);
    }
}
