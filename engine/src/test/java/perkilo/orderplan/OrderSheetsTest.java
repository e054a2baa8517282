package perkilo.orderplan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.poi.ss.formula.ConditionalFormattingEvaluator;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import perkilo.model.Book;
import perkilo.purchasing.SearchLimits;
import perkilo.purchasing.search.CheapestPlan;
import perkilo.report.order.OrderReport;
import perkilo.sheet.Chart;
import perkilo.sheet.Report;
import perkilo.sheet.ResultSheet;
import perkilo.units.Measure;
import perkilo.xlsx.write.WorkbookWriter;

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
        assertThat(text(sheet, 7, 0)).isEqualTo("Oleo: order by 2026-12-22, deliver by 2027-01-01");
        assertThat(text(sheet, 10, 0)).isEqualTo("Shea butter");
        String ordered = "IF(ISNUMBER('Supplier orders'!C11),'Supplier orders'!C11,0)*" + number("C9", "25");
        assertThat(formula(sheet, 10, 3)).isEqualTo(ordered);
        assertThat(formula(sheet, 10, 4))
                .isEqualTo("IF(" + ordered + ">=" + number("E10", "100") + "," + number("F10", "140.5") + ","
                        + number("F9", "150") + ")");
        assertThat(formula(sheet, 10, 5))
                .isEqualTo(
                        "ROUND(IF(ISNUMBER('Supplier orders'!C11),'Supplier orders'!C11,0)*'Supplier orders'!E11,2)");
        assertThat(((ResultSheet.Value) content(sheet, 10, 2)).expr().isLive()).isFalse();
    }

    /** A cell of the offers; what it held before counts while it holds no number. */
    private static String number(String cell, String before) {
        return "IF(ISNUMBER('Offers'!" + cell + "),'Offers'!" + cell + "," + before + ")";
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
        if (new OrderBook(new CheapestPlan(), SearchLimits.within(Duration.ofHours(1))).plan(book)
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

    @Test
    void a_plan_is_called_proven_only_while_it_is_the_one_that_was_proven() throws IOException {
        OrderOutcome.Planned planned = planned(Balm.book());
        assertThat(planned.plan().proven()).isTrue();
        Path file = folder.resolve("changed.xlsx");
        Report report = OrderReport.of(planned, Reasons.NONE, planned.findings());
        new WorkbookWriter().writeAlone(report.alone(), file);
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
            Cell packs = workbook.getSheet("Supplier orders").getRow(10).getCell(2);
            double asPlanned = packs.getNumericCellValue();
            assertThat(words(workbook)).contains("proven: no plan is cheaper").noneMatch(word -> word.contains("⚠"));

            packs.setCellValue(asPlanned + 1);
            assertThat(words(workbook))
                    .contains("⚠ Changed since it was planned. Run perkilo order again.")
                    .noneMatch(word -> word.contains("proven") || word.contains("no longer cover"));

            packs.setCellValue(0);
            assertThat(words(workbook))
                    .contains(
                            "⚠ Changed since it was planned. Run perkilo order again.",
                            "⚠ The orders no longer cover all needs. Run perkilo order again.")
                    .anyMatch(word -> word.startsWith("4 orders to 3 suppliers")
                            && word.endsWith(". ⚠ The orders no longer cover all needs. Run perkilo order again."));
        }
    }

    private static List<String> words(XSSFWorkbook workbook) {
        FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
        List<String> words = new ArrayList<>();
        for (String name : List.of("Order plan", "Stock and leftovers")) {
            for (Row row : workbook.getSheet(name)) {
                for (Cell cell : row) {
                    CellValue value = evaluator.evaluate(cell);
                    if (value != null && value.getCellType() == CellType.STRING) {
                        words.add(value.getStringValue());
                    }
                }
            }
        }
        return words;
    }

    /** The engine warns of offers that have lapsed when their order is placed; the sheet marks the same ones. */
    @Test
    void offers_that_have_lapsed_by_the_day_of_the_order_are_marked() throws IOException {
        OrderOutcome.Planned planned = planned(lapsing());
        Path file = folder.resolve("lapsed.xlsx");
        new WorkbookWriter()
                .writeAlone(
                        OrderReport.of(planned, Reasons.NONE, planned.findings())
                                .alone(),
                        file);
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
            XSSFFormulaEvaluator evaluator = new XSSFFormulaEvaluator(workbook);
            evaluator.evaluateAll();
            ConditionalFormattingEvaluator conditions = new ConditionalFormattingEvaluator(workbook, evaluator);
            Sheet sheet = workbook.getSheet("Supplier orders");
            List<String> marked = new ArrayList<>();
            int column = -1;
            for (Row row : sheet) {
                for (Cell cell : row) {
                    boolean heads = cell.getCellType() == CellType.STRING
                            && cell.getStringCellValue().equals("Valid until");
                    column = heads ? cell.getColumnIndex() : column;
                }
                Cell until = column < 0 ? null : row.getCell(column);
                if (until != null && isOnGround(conditions, until)) {
                    marked.add(row.getCell(0).getStringCellValue());
                }
            }
            List<String> lapsed = planned.plan().orders().stream()
                    .flatMap(order -> order.expiredOffers().stream()
                            .map(line -> order.listings().get(line).offer().item()))
                    .toList();
            assertThat(marked).isEqualTo(lapsed).isNotEmpty();
        }
    }

    /** Bought in December and in March; one of the offers ends with the year. */
    private static Book lapsing() {
        return new Trade("2026-11-25")
                .holding("0.12")
                .supplier("Oleo", "EUR", 10, "45", "300", "25", "0.35", "0.004", "0")
                .material("Shea butter", "18", "0")
                .material("Wax", null, "0")
                .offer("Oleo", "Shea butter", "25", Measure.KG, null, 1, "2026-12-31", "0", "150")
                .offer("Oleo", "Wax", "1", Measure.KG, null, 1, "2027-06-30", "0", "9.9")
                .product("Balm", List.of(), "Shea butter", "0.6", "Wax", "0.4")
                .demand("Balm", "1000", "2027-01-20")
                .demand("Balm", "9000", "2027-04-05")
                .book();
    }

    private static boolean isOnGround(ConditionalFormattingEvaluator conditions, Cell cell) {
        return conditions.getConditionalFormattingForCell(cell).stream()
                .anyMatch(rule -> rule.getRule().getPatternFormatting() != null);
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

    private static OrderOutcome.Planned planned(Book book) {
        return (OrderOutcome.Planned) new OrderBook(new CheapestPlan(), SearchLimits.usual()).plan(book);
    }

    private static ResultSheet sheet(String name) {
        OrderOutcome.Planned planned = planned(Balm.book());
        Reasons reasons = new WhyThis(new CheapestPlan(), WhyThis.Limits.within(Duration.ofHours(1))).of(planned);
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
