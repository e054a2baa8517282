package perkilo.xlsx.write;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.ComparisonOperator;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFDataValidationHelper;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import perkilo.xlsx.author.SampleBook;

/** A workbook with what people keep besides numbers. */
final class RichBook {

    private static final byte[] PICTURE = {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10, 0, 1, 2, 3};

    private RichBook() {}

    /** A chart, a comment, a picture, a validation, a condition, names, a table, an outline of columns. */
    static byte[] bytes() {
        try (XSSFWorkbook workbook = new XSSFWorkbook();
                ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            XSSFSheet offers = workbook.createSheet("Offers");
            fill(offers);
            XSSFDrawing drawing = offers.createDrawingPatriarch();
            chart(offers, drawing);
            comment(offers, drawing);
            int picture = workbook.addPicture(PICTURE, Workbook.PICTURE_TYPE_PNG);
            drawing.createPicture(new XSSFClientAnchor(0, 0, 0, 0, 10, 10, 12, 12), picture);
            rules(offers);
            names(workbook);
            offers.createTable(new AreaReference("A1:E5", SpreadsheetVersion.EXCEL2007));
            workbook.createSheet("Hidden");
            workbook.setSheetHidden(1, true);
            workbook.write(bytes);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void fill(XSSFSheet sheet) {
        for (int row = 0; row < SampleBook.offers().size(); row++) {
            SampleBook.fill(sheet.createRow(row), SampleBook.offers().get(row));
        }
        sheet.createRow(8).createCell(0, CellType.FORMULA).setCellFormula("SUM(D2:D5)");
    }

    private static void chart(XSSFSheet sheet, XSSFDrawing drawing) {
        XSSFChart chart = drawing.createChart(new XSSFClientAnchor(0, 0, 0, 0, 6, 0, 12, 9));
        var across = chart.createCategoryAxis(AxisPosition.BOTTOM);
        XDDFChartData data = chart.createData(ChartTypes.LINE, across, chart.createValueAxis(AxisPosition.LEFT));
        data.addSeries(
                XDDFDataSourcesFactory.fromStringCellRange(sheet, CellRangeAddress.valueOf("B2:B5")),
                XDDFDataSourcesFactory.fromNumericCellRange(sheet, CellRangeAddress.valueOf("D2:D5")));
        chart.plot(data);
    }

    private static void comment(XSSFSheet sheet, XSSFDrawing drawing) {
        var comment = drawing.createCellComment(new XSSFClientAnchor(0, 0, 0, 0, 4, 1, 6, 4));
        comment.setString("ask for a better price");
        sheet.getRow(1).getCell(3).setCellComment(comment);
    }

    private static void rules(XSSFSheet sheet) {
        XSSFDataValidationHelper helper = new XSSFDataValidationHelper(sheet);
        DataValidation list = helper.createValidation(
                helper.createExplicitListConstraint(new String[] {"kg", "g"}), new CellRangeAddressList(1, 9, 6, 6));
        sheet.addValidationData(list);
        var conditions = sheet.getSheetConditionalFormatting();
        var rule = conditions.createConditionalFormattingRule(ComparisonOperator.GT, "20");
        rule.createFontFormatting().setFontStyle(true, false);
        conditions.addConditionalFormatting(new CellRangeAddress[] {CellRangeAddress.valueOf("D2:D5")}, rule);
        sheet.setAutoFilter(CellRangeAddress.valueOf("A1:E5"));
        sheet.setRepeatingRows(CellRangeAddress.valueOf("1:1"));
    }

    private static void names(XSSFWorkbook workbook) {
        XSSFName everywhere = workbook.createName();
        everywhere.setNameName("prices");
        everywhere.setRefersToFormula("Offers!$D$2:$D$5");
        XSSFName local = workbook.createName();
        local.setNameName("duty");
        local.setSheetIndex(0);
        local.setRefersToFormula("Offers!$E$2:$E$5");
    }
}
