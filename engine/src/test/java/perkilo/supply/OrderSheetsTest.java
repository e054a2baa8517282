package perkilo.supply;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Objects;
import java.util.function.UnaryOperator;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import perkilo.model.Book;
import perkilo.ordering.CheapestPlan;
import perkilo.purchasing.SearchLimits;
import perkilo.report.Chart;
import perkilo.report.Report;
import perkilo.report.ResultSheet;
import perkilo.report.order.OrderReport;
import perkilo.workbook.write.WorkbookWriter;

/**
 * The sheets of an order plan: what they say, what their formulas refer to, and that a spreadsheet computes the same.
 */
final class OrderSheetsTest {

    @TempDir
    private Path folder = Path.of("");

    @Test
    void the_plan_begins_with_its_answer() {
        ResultSheet sheet = sheet("Order plan");
        ResultSheet.Sentence answer = (ResultSheet.Sentence) content(sheet, 3, 0);
        assertThat(answer.text())
                .isEqualTo("4 orders to 3 suppliers, 6,458.51 EUR; next: order from Oleo by 2026-12-22");
        assertThat(answer.formula(UnaryOperator.identity())).contains("FIXED('Order plan'!");
    }

    @Test
    void amounts_follow_the_packs_the_offers_and_the_suppliers_cells() {
        ResultSheet sheet = sheet("Supplier orders");
        assertThat(text(sheet, 3, 0)).isEqualTo("Oleo: order by 2026-12-22, here by 2027-01-01");
        assertThat(text(sheet, 6, 0)).isEqualTo("Shea butter");
        assertThat(formula(sheet, 6, 3)).isEqualTo("'Supplier orders'!C7*'Offers'!C9");
        assertThat(formula(sheet, 6, 4))
                .isEqualTo("IF('Supplier orders'!C7*'Offers'!C9>='Offers'!E10,'Offers'!F10,'Offers'!F9)");
        assertThat(formula(sheet, 6, 5)).isEqualTo("ROUND('Supplier orders'!C7*'Supplier orders'!E7,2)");
        assertThat(((ResultSheet.Value) content(sheet, 6, 2)).expr().isLive()).isFalse();
    }

    @Test
    void stock_is_used_up_by_formulas() {
        ResultSheet sheet = sheet("Stock and leftovers");
        assertThat(sheet.charts()).extracting(Chart::kind).containsExactly(Chart.Kind.LINES);
        assertThat(sheet.cells().values().stream()
                        .flatMap(row -> row.values().stream())
                        .map(ResultSheet.Cell::content)
                        .filter(content -> content instanceof ResultSheet.Value)
                        .map(content -> ((ResultSheet.Value) content).expr().formula(UnaryOperator.identity())))
                .anyMatch(formula -> formula.startsWith("MIN("))
                .anyMatch(formula -> formula.contains("'Stock'!B"));
    }

    @Test
    void why_comes_as_values() {
        ResultSheet sheet = sheet("Why these orders");
        assertThat(sheet.cells().values().stream()
                        .flatMap(row -> row.values().stream())
                        .map(ResultSheet.Cell::content)
                        .filter(content -> content instanceof ResultSheet.Value value
                                && value.expr().isLive()))
                .isEmpty();
    }

    static Stream<Book> books() {
        return Stream.concat(
                Stream.of(Balm.book()),
                LongStream.rangeClosed(1, 6)
                        .mapToObj(seed -> RandomTrades.of(seed).book()));
    }

    @ParameterizedTest
    @MethodSource("books")
    void a_spreadsheet_computes_the_same(Book book) throws IOException {
        if (new OrderBook(new CheapestPlan(), SearchLimits.within(Duration.ofSeconds(20))).plan(book)
                instanceof OrderOutcome.Planned planned) {
            Report report = OrderReport.of(planned, Reasons.NONE, planned.findings());
            Path file = folder.resolve("orders.xlsx");
            new WorkbookWriter().writeAlone(report.alone(), file);
            try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
                FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
                for (Sheet sheet : workbook) {
                    for (Row row : sheet) {
                        row.forEach(cell -> computesTheSame(evaluator, cell));
                    }
                }
            }
        }
    }

    private static void computesTheSame(FormulaEvaluator evaluator, Cell cell) {
        if (cell.getCellType() == CellType.FORMULA && cell.getCachedFormulaResultType() == CellType.NUMERIC) {
            double written = cell.getNumericCellValue();
            CellValue computed = evaluator.evaluate(cell);
            assertThat(computed.getNumberValue())
                    .as(cell.getSheet().getSheetName() + "!" + cell.getAddress() + " = " + cell.getCellFormula())
                    .isCloseTo(written, Offset.offset(1e-9 * Math.max(1, Math.abs(written))));
        }
    }

    private static ResultSheet sheet(String name) {
        OrderOutcome.Planned planned =
                (OrderOutcome.Planned) new OrderBook(new CheapestPlan(), SearchLimits.usual()).plan(Balm.book());
        Reasons reasons = new WhyThis(new CheapestPlan(), WhyThis.Limits.within(Duration.ofMinutes(1))).of(planned);
        return OrderReport.of(planned, reasons, planned.findings()).sheets().stream()
                .filter(sheet -> sheet.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static ResultSheet.Content content(ResultSheet sheet, int row, int column) {
        return Objects.requireNonNull(
                        Objects.requireNonNull(sheet.cells().get(row)).get(column))
                .content();
    }

    private static String text(ResultSheet sheet, int row, int column) {
        return ((ResultSheet.Text) content(sheet, row, column)).text();
    }

    private static String formula(ResultSheet sheet, int row, int column) {
        return ((ResultSheet.Value) content(sheet, row, column)).expr().formula(UnaryOperator.identity());
    }
}
