package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A plan in a person's workbook whose days and limits are changed afterwards. */
@Tag("slow")
final class ChangedPlanTest {

    private static final String PROVEN = "proven: no plan is cheaper";
    private static final String CHANGED = "⚠ Changed since it was planned. Run perkilo order again.";

    @TempDir
    private Path folder = Path.of("");

    @Test
    void a_plan_is_called_proven_only_while_the_days_and_limits_stand_that_it_rests_on() throws IOException {
        Path book = folder.resolve("orders.xlsx");
        CommandLineRun.of("new", "orders", book);
        Path ordered = folder.resolve("ordered.xlsx");
        assertThat(CommandLineRun.of(
                                "order",
                                "-q",
                                "--time",
                                "3600",
                                "--why",
                                "0",
                                "--date",
                                "2026-11-20",
                                book,
                                "-o",
                                ordered)
                        .exit())
                .isEqualTo(Exit.DONE);

        assertThat(said(ordered, workbook -> {})).containsExactly(PROVEN);
        assertThat(said(ordered, workbook -> day(workbook, "Demand", 1, 2)))
                .as("a day that something is needed by")
                .containsExactly(CHANGED);
        assertThat(said(ordered, workbook -> day(workbook, "Stock", 1, 3)))
                .as("a day that stock expires on")
                .containsExactly(CHANGED);
        assertThat(said(ordered, workbook -> number(workbook, "Suppliers", "Lead time days")))
                .containsExactly(CHANGED);
        assertThat(said(ordered, workbook -> number(workbook, "Suppliers", "Minimum order value")))
                .containsExactly(CHANGED);
    }

    private static void day(XSSFWorkbook workbook, String sheet, int row, int column) {
        workbook.getSheet(sheet).getRow(row).getCell(column).setCellValue(LocalDate.of(2027, 4, 3));
    }

    /** One more in the first row that holds a number there. */
    private static void number(XSSFWorkbook workbook, String sheet, String head) {
        int column = -1;
        for (Cell cell : workbook.getSheet(sheet).getRow(0)) {
            column = cell.getStringCellValue().equals(head) ? cell.getColumnIndex() : column;
        }
        Cell cell = workbook.getSheet(sheet).getRow(2).getCell(column);
        cell.setCellValue(cell.getNumericCellValue() + 1);
    }

    /** Which of the two sentences the plan says once a spreadsheet has computed it anew. */
    private static List<String> said(Path ordered, Consumer<XSSFWorkbook> change) throws IOException {
        List<String> said = new ArrayList<>();
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(ordered))) {
            change.accept(workbook);
            FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
            for (Row row : workbook.getSheet("Order plan")) {
                for (Cell cell : row) {
                    if (cell.getCellType() == CellType.FORMULA
                            && cell.getCachedFormulaResultType() == CellType.STRING) {
                        String words = evaluator.evaluate(cell).getStringValue();
                        if (words.equals(PROVEN) || words.equals(CHANGED)) {
                            said.add(words);
                        }
                    }
                }
            }
        }
        return said;
    }
}
