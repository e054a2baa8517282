package perkilo.workbook.write;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.function.UnaryOperator;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import perkilo.report.Report;
import perkilo.report.ResultSheet;
import perkilo.workbook.ready.SpreadsheetLibrary;

/**
 * A report as a workbook that holds the result sheets and nothing else.
 *
 * <p>Its formulas refer to sheets that are in the person's workbook only, so they are stored without being understood
 * here.
 */
final class ScratchWorkbook {

    private final Report report;
    private final Links links;
    private final UnaryOperator<String> names;

    ScratchWorkbook(Report report, Links links) {
        this.report = report;
        this.links = links;
        this.names = name -> links.resultSheets().getOrDefault(name, name);
    }

    /** The workbook as an XLSX file. */
    byte[] bytes() throws IOException {
        try (XSSFWorkbook workbook = workbook();
                ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            workbook.write(bytes);
            return bytes.toByteArray();
        }
    }

    /** The workbook, to be closed. */
    XSSFWorkbook workbook() {
        SpreadsheetLibrary.await();
        XSSFWorkbook workbook = new XSSFWorkbook();
        CellStyles styles = new CellStyles(workbook);
        for (ResultSheet sheet : report.sheets()) {
            workbook.createSheet(names.apply(sheet.name()));
        }
        for (ResultSheet sheet : report.sheets()) {
            fill(workbook.getSheet(names.apply(sheet.name())), sheet, styles);
        }
        return workbook;
    }

    private void fill(XSSFSheet target, ResultSheet sheet, CellStyles styles) {
        new SheetCells(target, sheet, styles, links, names).write();
        SheetLayout.apply(sheet, target);
        PrintSetup.apply(sheet, target);
        Highlights.apply(sheet.highlights(), target);
        ChartDrawing.draw(sheet.charts(), target, new ChartValues(report, names));
    }
}
