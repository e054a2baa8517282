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
import org.assertj.core.data.Percentage;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import perkilo.costing.CostOutcome;
import perkilo.costing.CostRuns;
import perkilo.costing.ItemCost;
import perkilo.costing.RunCost;
import perkilo.purchasing.PlanCost;
import perkilo.purchasing.PlanOutcome;
import perkilo.purchasing.PlanPurchases;
import perkilo.purchasing.PurchasePlan;
import perkilo.purchasing.SearchLimits;
import perkilo.purchasing.search.CheapestPlan;
import perkilo.reading.BookReader;
import perkilo.reading.Sources;
import perkilo.report.cost.CostReport;
import perkilo.xlsx.write.WorkbookWriter;

/** A person changes a cell in the result workbook of the demo launch; another program's library recalculates it. */
@Tag("slow")
final class EditedResultTest {

    private static final Path TEMPLATE = Path.of("../workbook-templates/launch.xlsx");
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final String SHORT = "The purchase no longer covers this. Run perkilo cost again.";
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
        return cost(file, new CheapestPlan());
    }

    private static CostOutcome.Costed cost(Path file, PlanPurchases planner) {
        try {
            var book = new BookReader()
                    .read(new Sources(file, List.of(), null, null), DAY)
                    .value();
            return (CostOutcome.Costed) new CostRuns(planner, SearchLimits.usual()).cost(book);
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
                if (text(evaluator, row.getCell(13)).equals("\u26A0 " + SHORT)) {
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

    /** Where a person left a cell blank or typed words, a number that is typed there in the result counts. */
    @Test
    void numbers_in_cells_that_held_words_or_nothing_count_as_the_engine_counts_them() throws IOException {
        Path bare = folder.resolve("bare.xlsx");
        try (XSSFWorkbook book = open(TEMPLATE);
                OutputStream out = Files.newOutputStream(bare)) {
            for (Typed typed : LATER) {
                Cell cell = typed.in(book);
                cell.setBlank();
                if (!typed.before().isEmpty()) {
                    cell.setCellValue(typed.before());
                }
            }
            book.write(out);
        }
        costed = cost(bare);
        new WorkbookWriter().write(bare, CostReport.of(costed, List.of()), result);
        try (XSSFWorkbook book = open(result)) {
            List<Double> before = unitCosts(book);
            areClose("as written", before, engine(costed));
            for (Typed typed : LATER) {
                typed.in(book).setCellValue(typed.later());
                Path edited = folder.resolve("edited.xlsx");
                try (OutputStream out = Files.newOutputStream(edited)) {
                    book.write(out);
                }
                List<Double> expected = engine(cost(edited, samePurchases()));
                List<Double> computed = unitCosts(book);
                assertThat(moved(before, computed)).as(typed.toString()).isTrue();
                areClose(typed.toString(), computed, expected);
                before = computed;
            }
        }
    }

    /**
     * A cell of the demo launch.
     *
     * @param before what it holds when the workbook is costed; empty for nothing
     * @param later the number that is typed into it in the result
     */
    private record Typed(String sheet, String header, int row, String before, double later) {

        Cell in(XSSFWorkbook book) {
            Sheet sheet = EditedResultTest.sheet(book, this.sheet);
            for (Cell head : sheet.getRow(0)) {
                if (head.getStringCellValue().equals(header)) {
                    return sheet.getRow(row).getCell(head.getColumnIndex(), Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
                }
            }
            throw new AssertionError(this);
        }
    }

    private static final List<Typed> LATER = List.of(
            new Typed("Suppliers", "Freight per order", 2, "", 12.5),
            new Typed("Suppliers", "Freight per kg", 2, "–", 0.75),
            new Typed("Offers", "Price", 270, "31,95", 33.1),
            new Typed("Offers", "Price", 400, "0,62 €/each", 0.66),
            new Typed("Offers", "Pack size", 270, "1,00 kg", 1.25),
            new Typed("Rates", "Rate", 1, "0,8642", 0.87),
            new Typed("Batches", "Hours per batch", 1, "", 1.25),
            new Typed("Batches", "Hours per kg", 1, "2 h", 0.04),
            new Typed("Batches", "Quality control per batch", 1, "", 18),
            new Typed("Batches", "Hold-up kg", 3, "", 0.001),
            new Typed("Products", "Filling set-up hours", 1, "", 1.5),
            new Typed("Products", "Filling people", 1, "", 3),
            new Typed("Products", "One-off costs", 1, "1 450 EUR", 1500),
            new Typed("Settings", "Value", 7, "25,5", 26));

    /** Buys for each run what was bought before, in the order of the runs. */
    private PlanPurchases samePurchases() {
        List<PurchasePlan> plans =
                costed.runs().stream().map(run -> run.purchase().plan()).toList();
        int[] next = {0};
        return (problem, limits) -> {
            PurchasePlan plan = plans.get(next[0]++);
            PlanCost cost = PlanCost.of(problem, plan);
            return new PlanOutcome.Proven(plan, cost, cost.objective());
        };
    }

    private static boolean moved(List<Double> before, List<Double> now) {
        for (int run = 0; run < before.size(); run++) {
            if (Math.abs(now.get(run) / before.get(run) - 1) > 1e-7) {
                return true;
            }
        }
        return false;
    }

    private static void areClose(String what, List<Double> computed, List<Double> expected) {
        assertThat(computed).as(what).hasSameSizeAs(expected);
        for (int run = 0; run < expected.size(); run++) {
            assertThat(computed.get(run))
                    .as(what + ", run " + run)
                    .isCloseTo(expected.get(run), Percentage.withPercentage(1e-7));
        }
    }

    private static List<Double> engine(CostOutcome.Costed costed) {
        return costed.runs().stream()
                .map(run -> run.unitCost().orElseThrow().doubleValue())
                .toList();
    }

    private static List<Double> unitCosts(XSSFWorkbook book) {
        FormulaEvaluator evaluator = evaluator(book);
        List<Double> costs = new ArrayList<>();
        for (Row row : sheet(book, "Cost detail")) {
            if (text(evaluator, row.getCell(0)).equals("Unit cost")) {
                costs.add(evaluator.evaluate(row.getCell(1)).getNumberValue());
            }
        }
        return costs;
    }

    private static void setUnits(XSSFWorkbook book, double units) {
        Row first = sheet(book, "Runs").getRow(1);
        assertThat(first.getCell(0).getStringCellValue()).isEqualTo("Hand balm");
        assertThat(first.getCell(1).getNumericCellValue()).isEqualTo(FEW);
        first.getCell(1).setCellValue(units);
    }

    private static XSSFWorkbook open(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return CellFunction.withoutComparisons(new XSSFWorkbook(in));
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
