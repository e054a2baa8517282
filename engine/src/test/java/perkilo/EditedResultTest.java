package perkilo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import perkilo.costing.CostOutcome;
import perkilo.costing.CostRuns;
import perkilo.costing.ItemCost;
import perkilo.costing.RunCost;
import perkilo.ordering.CheapestPlan;
import perkilo.purchasing.SearchLimits;
import perkilo.report.cost.CostReport;
import perkilo.workbook.read.BookReader;
import perkilo.workbook.read.Sources;
import perkilo.workbook.write.WorkbookWriter;

/** A person changes a cell in the result workbook of the demo launch; another program's library recalculates it. */
final class EditedResultTest {

    private static final Path TEMPLATE = Path.of("../workbook-templates/launch.xlsx");
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final String SHORT = "Not enough is bought for this: run perkilo cost again";
    private static final double FEW = 300;
    private static final double MANY = 900;

    @TempDir
    private Path folder = Path.of("");

    private CostOutcome.Costed costed = cost(TEMPLATE);
    private Path result = Path.of("");

    @BeforeEach
    void writeResult() throws IOException {
        result = folder.resolve("launch-costed.xlsx");
        new WorkbookWriter().write(TEMPLATE, CostReport.of(costed, List.of()), result);
    }

    private static CostOutcome.Costed cost(Path file) {
        try {
            var book = new BookReader()
                    .read(new Sources(file, List.of(), null, null), DAY)
                    .value();
            return (CostOutcome.Costed) new CostRuns(new CheapestPlan(), SearchLimits.usual()).cost(book);
        } catch (IOException failed) {
            throw new AssertionError(failed);
        }
    }

    @Test
    void the_engines_own_purchase_is_enough_everywhere() throws IOException {
        try (XSSFWorkbook book = open(result)) {
            assertThat(texts(book, "Cost summary")).noneMatch(text -> text.contains("Not enough"));
            assertThat(texts(book, "Cost detail")).noneMatch(text -> text.contains("Not enough"));
        }
    }

    /** What the engine needs for more units, against what it had bought for fewer. */
    @Test
    void where_more_units_need_more_than_is_bought_the_run_and_its_items_say_so() throws IOException {
        Path more = folder.resolve("more.xlsx");
        try (XSSFWorkbook book = open(TEMPLATE);
                OutputStream out = Files.newOutputStream(more)) {
            setUnits(book, MANY);
            book.write(out);
        }
        RunCost before = costed.runs().get(0);
        Map<String, BigDecimal> bought = new HashMap<>();
        before.items().forEach(item -> bought.put(item.item().name(), item.ordered()));
        TreeSet<String> expected = new TreeSet<>();
        for (ItemCost item : cost(more).runs().get(0).items()) {
            BigDecimal had = Objects.requireNonNull(bought.get(item.item().name()));
            if (item.housePrice() == null && item.item().needed().compareTo(had) > 0) {
                expected.add(item.item().name());
            }
        }

        try (XSSFWorkbook book = open(result)) {
            setUnits(book, MANY);
            FormulaEvaluator evaluator = evaluator(book);
            TreeSet<String> said = new TreeSet<>();
            for (Row row : sheet(book, "Cost detail")) {
                if (text(evaluator, row.getCell(13)).equals(SHORT)) {
                    said.add(row.getCell(0).getStringCellValue());
                }
            }
            assertThat(said).isEqualTo(expected).isNotEmpty();
            List<String> answers = texts(book, "Cost summary");
            assertThat(answers)
                    .filteredOn(text -> text.endsWith(SHORT))
                    .singleElement()
                    .asString()
                    .startsWith("900 × Hand balm cost ");
        }
    }

    @Test
    void a_run_is_called_by_the_units_it_now_has() throws IOException {
        try (XSSFWorkbook book = open(result)) {
            for (String sheet : List.of("Cost summary", "Cost detail", "Price ladder")) {
                assertThat(texts(book, sheet)).contains("300 × Hand balm");
            }
            setUnits(book, MANY);
            for (String sheet : List.of("Cost summary", "Cost detail", "Price ladder")) {
                assertThat(texts(book, sheet)).contains("900 × Hand balm").doesNotContain("300 × Hand balm");
            }
        }
    }

    private static void setUnits(XSSFWorkbook book, double units) {
        Row first = sheet(book, "Runs").getRow(1);
        assertThat(first.getCell(0).getStringCellValue()).isEqualTo("Hand balm");
        assertThat(first.getCell(1).getNumericCellValue()).isEqualTo(FEW);
        first.getCell(1).setCellValue(units);
    }

    private static XSSFWorkbook open(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return new XSSFWorkbook(in);
        }
    }

    private static Sheet sheet(XSSFWorkbook book, String name) {
        return Objects.requireNonNull(book.getSheet(name));
    }

    private static FormulaEvaluator evaluator(XSSFWorkbook book) {
        return book.getCreationHelper().createFormulaEvaluator();
    }

    /** All words of a sheet as they now read. */
    private static List<String> texts(XSSFWorkbook book, String sheet) {
        FormulaEvaluator evaluator = evaluator(book);
        List<String> texts = new ArrayList<>();
        for (Row row : sheet(book, sheet)) {
            row.forEach(cell -> texts.add(text(evaluator, cell)));
        }
        return texts;
    }

    private static String text(FormulaEvaluator evaluator, @Nullable Cell cell) {
        CellValue value = cell == null ? null : evaluator.evaluate(cell);
        return value != null && value.getCellType() == CellType.STRING ? value.getStringValue() : "";
    }
}
