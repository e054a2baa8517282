package perkilo.workbook.ready;

import java.io.IOException;
import java.io.OutputStream;
import java.util.concurrent.atomic.AtomicReference;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Whether the spreadsheet library is loaded, and loading it ahead of its use. */
public final class SpreadsheetLibrary {

    private static final AtomicReference<Thread> LOADING = new AtomicReference<>();

    private SpreadsheetLibrary() {}

    /** Begins to load the library, if there is a second processor for it. */
    public static void begin() {
        Thread thread = new Thread(SpreadsheetLibrary::load, "spreadsheet-library");
        thread.setDaemon(true);
        if (Runtime.getRuntime().availableProcessors() > 1 && LOADING.compareAndSet(null, thread)) {
            thread.start();
        }
    }

    /** Waits until loading is over, if it was begun. */
    public static void await() {
        Thread thread = LOADING.get();
        try {
            if (thread != null) {
                thread.join();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Writes a workbook into the void; what fails here fails again, and is told, when the library is used. */
    private static void load() {
        try (XSSFWorkbook workbook = new XSSFWorkbook();
                OutputStream nowhere = OutputStream.nullOutputStream()) {
            fill(workbook);
            workbook.write(nowhere);
        } catch (IOException | RuntimeException | LinkageError e) {
            return;
        }
    }

    private static void fill(XSSFWorkbook workbook) {
        XSSFSheet sheet = workbook.createSheet();
        XSSFCellStyle style = workbook.createCellStyle();
        style.setFont(workbook.createFont());
        style.setDataFormat(workbook.createDataFormat().getFormat("0.000"));
        XSSFCell cell = sheet.createRow(0).createCell(0);
        cell.setCellStyle(style);
        cell.setCellFormula("SUM(A2:A3)");
        sheet.setAutoFilter(new CellRangeAddress(0, 1, 0, 1));
        sheet.getSheetConditionalFormatting().createConditionalFormattingRule("A1>0");
        chart(sheet.createDrawingPatriarch());
    }

    private static void chart(XSSFDrawing drawing) {
        XSSFChart chart = drawing.createChart(drawing.createAnchor(0, 0, 0, 0, 1, 1, 2, 2));
        chart.setTitleText("");
        XDDFChartData data = chart.createData(
                ChartTypes.BAR,
                chart.createCategoryAxis(AxisPosition.BOTTOM),
                chart.createValueAxis(AxisPosition.LEFT));
        data.addSeries(
                XDDFDataSourcesFactory.fromArray(new String[] {"a"}),
                XDDFDataSourcesFactory.fromArray(new Double[] {1.0}));
        chart.plot(data);
    }
}
