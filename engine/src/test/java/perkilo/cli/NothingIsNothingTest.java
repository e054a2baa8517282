package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import perkilo.costing.CostOutcome;
import perkilo.desk.CostAnswer;
import perkilo.desk.CostBook;
import perkilo.desk.CostRequest;
import perkilo.desk.RunSizes;
import perkilo.desk.Watch;
import perkilo.reading.Sources;

/** What is nothing is shown as nothing, not as what divisions leave in the last digits ("-0.00 EUR"). */
final class NothingIsNothingTest {

    /** Far less than any price's last digit. */
    private static final double DUST = 1e-9;

    @TempDir
    private Path folder = Path.of("");

    @ParameterizedTest
    @ValueSource(strings = {"minimal", "launch"})
    void no_figure_of_a_cost_is_dust(String template) throws IOException {
        Path book = folder.resolve("book.xlsx");
        Path costed = folder.resolve("costed.xlsx");
        assertThat(run("new", template, book.toString())).isZero();
        assertThat(run("cost", "-q", book.toString(), "-o", costed.toString())).isZero();

        try (XSSFWorkbook workbook = new XSSFWorkbook(costed.toFile())) {
            assertThat(figures(workbook)).hasSizeGreaterThan(100).allMatch(figure -> !isDust(figure));
        } catch (org.apache.poi.openxml4j.exceptions.InvalidFormatException e) {
            throw new IOException(e);
        }
    }

    /** What came on top of goods that nothing came on top of is nothing at any size. */
    @ParameterizedTest
    @ValueSource(strings = {"minimal", "launch"})
    void no_head_of_a_cost_is_dust_at_any_size(String template) throws IOException {
        Path path = folder.resolve("book.xlsx");
        assertThat(run("new", template, path.toString())).isZero();
        List<BigDecimal> units = new ArrayList<>();
        for (int size = 7; size < 2000; size += 18) {
            units.add(BigDecimal.valueOf(size));
        }
        CostRequest request =
                new CostRequest(Sources.of(path), new RunSizes(units, List.of()), LocalDate.of(2026, 11, 20));
        CostOutcome.Costed outcome = ((CostAnswer.Costed) new CostBook().cost(request, Watch.NONE)).costed();

        assertThat(outcome.runs())
                .hasSize(outcome.book().products().size() * units.size())
                .allSatisfy(cost -> assertThat(cost.heads().values()).allMatch(head -> !isDust(head.doubleValue())));
    }

    private static boolean isDust(double figure) {
        return figure != 0 && Math.abs(figure) < DUST;
    }

    private static List<Double> figures(XSSFWorkbook workbook) {
        List<Double> figures = new ArrayList<>();
        for (Sheet sheet : workbook) {
            for (Row row : sheet) {
                for (Cell cell : row) {
                    if (cell.getCellType() == CellType.FORMULA
                            && cell.getCachedFormulaResultType() == CellType.NUMERIC) {
                        figures.add(cell.getNumericCellValue());
                    }
                }
            }
        }
        return figures;
    }

    private static int run(String... words) {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        return Perkilo.run(nowhere, nowhere, words);
    }
}
