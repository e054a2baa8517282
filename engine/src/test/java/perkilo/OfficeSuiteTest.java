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
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import perkilo.costing.CostOutcome;
import perkilo.costing.CostRuns;
import perkilo.costing.RunCost;
import perkilo.model.Book;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.origin.Reading;
import perkilo.purchasing.LineCost;
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

/**
 * A person changes an input in the result workbook: what the office suite then computes is what the engine computes
 * from the same change and the same purchase.
 *
 * <p>The cached values are taken out first, so that the office suite can reuse none of them.
 */
@Tag("office")
final class OfficeSuiteTest {

    private static final Path TEMPLATE = Path.of("../workbook-templates/launch.xlsx");
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final Percentage CLOSE = Percentage.withPercentage(1e-7);

    @TempDir
    private Path folder = Path.of("");

    @Test
    void a_changed_price_a_changed_percentage_and_a_changed_rate_give_the_engines_costs() throws Exception {
        CostOutcome.Costed costed = cost(read(TEMPLATE), new CheapestPlan());
        Path result = folder.resolve("launch-costed.xlsx");
        new WorkbookWriter().write(TEMPLATE, CostReport.of(costed, List.of()), result);

        Path changed = folder.resolve("changed.xlsx");
        change(result, changed, costed);

        List<BigDecimal> engine = new ArrayList<>();
        for (RunCost run : cost(read(changed), samePurchases(costed)).runs()) {
            engine.add(run.unitCost().orElseThrow());
        }
        List<Double> office = unitCosts(recalculated(changed));
        assertThat(office).hasSameSizeAs(engine);
        int moved = 0;
        for (int run = 0; run < engine.size(); run++) {
            assertThat(office.get(run)).isCloseTo(engine.get(run).doubleValue(), CLOSE);
            BigDecimal before = costed.runs().get(run).unitCost().orElseThrow();
            moved += engine.get(run).compareTo(before) == 0 ? 0 : 1;
        }
        // a run at the vessel's minimum, paid in home currency, costs the same whatever is lost in filling
        assertThat(moved).isGreaterThan(engine.size() / 2);
    }

    private static Book read(Path file) throws IOException {
        Reading<Book> reading = new BookReader().read(new Sources(file, List.of(), null, null), DAY);
        assertThat(reading.hasErrors()).as(reading.findings().toString()).isFalse();
        return reading.value();
    }

    private static CostOutcome.Costed cost(Book book, PlanPurchases planner) {
        return (CostOutcome.Costed) new CostRuns(planner, SearchLimits.usual()).cost(book);
    }

    /** Buys for each run what was bought before, in the order of the runs. */
    private static PlanPurchases samePurchases(CostOutcome.Costed before) {
        List<PurchasePlan> plans =
                before.runs().stream().map(run -> run.purchase().plan()).toList();
        int[] next = {0};
        return (problem, limits) -> {
            PurchasePlan plan = plans.get(next[0]++);
            PlanCost cost = PlanCost.of(problem, plan);
            return new PlanOutcome.Proven(plan, cost, cost.objective());
        };
    }

    /** Raises a price that the first run pays, halves every fill loss, and moves every rate; nothing cached is left. */
    private static void change(Path from, Path to, CostOutcome.Costed costed) throws IOException {
        try (InputStream in = Files.newInputStream(from);
                XSSFWorkbook book = new XSSFWorkbook(in);
                OutputStream out = Files.newOutputStream(to)) {
            RunCost first = costed.runs().get(0);
            LineCost line = first.purchase().cost().lines().get(0);
            Figure price = first.purchase()
                    .listing(line)
                    .offer()
                    .breaks()
                    .get(line.tier())
                    .price();
            scale(book, price.origin(), 1.07);
            costed.book()
                    .products()
                    .values()
                    .forEach(product -> scale(book, product.fillLoss().origin(), 0.5));
            costed.book()
                    .rates()
                    .rates()
                    .forEach(rate -> scale(book, rate.rate().origin(), 1.013));
            forgetValues(book);
            book.write(out);
        }
    }

    private static void scale(XSSFWorkbook book, Origin origin, double factor) {
        CellReference at = new CellReference(origin.cell());
        XSSFCell cell = book.getSheet(origin.sheet()).getRow(at.getRow()).getCell(at.getCol());
        cell.setCellValue(cell.getNumericCellValue() * factor);
    }

    private static void forgetValues(XSSFWorkbook book) {
        for (Sheet sheet : book) {
            for (Row row : sheet) {
                for (Cell cell : row) {
                    if (cell instanceof XSSFCell formula
                            && formula.getCellType() == CellType.FORMULA
                            && formula.getCTCell().isSetV()) {
                        formula.getCTCell().unsetV();
                    }
                }
            }
        }
    }

    private Path recalculated(Path changed) throws Exception {
        Path out = Files.createDirectories(folder.resolve("recalculated"));
        Process suite = new ProcessBuilder(
                        "soffice",
                        "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                        "--headless",
                        "--convert-to",
                        "xlsx",
                        "--outdir",
                        out.toString(),
                        changed.toString())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("suite.log").toFile())
                .start();
        assertThat(suite.waitFor(10, TimeUnit.MINUTES)).isTrue();
        return out.resolve(changed.getFileName());
    }

    private static List<Double> unitCosts(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file);
                XSSFWorkbook book = new XSSFWorkbook(in)) {
            Sheet summary = book.getSheet("Cost summary");
            CellReference head = headed(summary, "Unit cost");
            List<Double> costs = new ArrayList<>();
            for (int row = head.getRow() + 1; summary.getRow(row) != null; row++) {
                Cell cell = summary.getRow(row).getCell(head.getCol());
                if (cell == null || cell.getCellType() == CellType.BLANK) {
                    break;
                }
                costs.add(cell.getNumericCellValue());
            }
            return costs;
        }
    }

    private static CellReference headed(Sheet sheet, String head) {
        for (Row row : sheet) {
            for (Cell cell : row) {
                if (cell.getCellType() == CellType.STRING
                        && cell.getStringCellValue().equals(head)) {
                    return new CellReference(cell);
                }
            }
        }
        throw new AssertionError("no column " + head);
    }
}
