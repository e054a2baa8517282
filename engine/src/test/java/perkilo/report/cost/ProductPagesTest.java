package perkilo.report.cost;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import perkilo.costing.CostOutcome;
import perkilo.costing.CostRuns;
import perkilo.costing.RunCost;
import perkilo.model.Book;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.purchasing.SearchLimits;
import perkilo.purchasing.search.CheapestPlan;
import perkilo.purchasing.search.quick.QuickPlanner;
import perkilo.reading.BookReader;
import perkilo.reading.Sources;
import perkilo.sheet.ResultSheet;

/** A page for each product, from the demo launch. */
final class ProductPagesTest {

    private static final CostOutcome.Costed COSTED = costed();

    private static CostOutcome.Costed costed() {
        try {
            Book book = new BookReader()
                    .read(
                            new Sources(Path.of("../workbook-templates/launch.xlsx"), List.of(), null, null),
                            LocalDate.of(2026, 11, 20))
                    .value();
            return (CostOutcome.Costed)
                    new CostRuns(new QuickPlanner(new CheapestPlan()), SearchLimits.usual()).cost(book);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    @Test
    void it_is_the_first_sheet_with_a_page_and_two_charts_for_each_product() {
        ResultSheet sheet = first(List.of());

        assertThat(sheet.name()).isEqualTo("At a glance");
        assertThat(sheet.charts()).hasSize(6);
        assertThat(sheet.layout().pageBreaksBefore()).hasSize(2);
        assertThat(texts(sheet)).contains("Hand balm", "Body lotion", "Face oil");
    }

    /** At the shop price of 24.90: wholesale 24.90 / 1.19 × 0.55, and the profit of 300, from the ladder. */
    @Test
    void the_figures_are_those_of_the_ladder() {
        RunCost run = COSTED.runs().get(0);
        BigDecimal units = requireNonNull(run.needs().units());
        BigDecimal profit = requireNonNull(run.ladder()).sale().profitPerUnit().multiply(units);

        assertThat(numbers(first(List.of())))
                .anyMatch(number -> isClose(number, profit))
                .anyMatch(number -> isClose(number, run.cash()))
                .anyMatch(number -> isClose(number, new BigDecimal("24.90")))
                .anyMatch(number -> isClose(
                        number, requireNonNull(requireNonNull(run.ladder()).breakEvenUnits())));
    }

    @Test
    void warnings_are_shown_and_notes_are_not() {
        Finding warning = Finding.warning(Origin.NONE, "A price is old.");
        Finding note = Finding.note(Origin.NONE, "Something was assumed.");

        assertThat(texts(first(List.of(warning, note))))
                .anyMatch(text -> text.contains("A price is old."))
                .noneMatch(text -> text.contains("assumed"));
        assertThat(texts(first(List.of(note)))).contains("Nothing needs a look. Notes are on Messages.");
    }

    private static boolean isClose(BigDecimal number, BigDecimal expected) {
        return number.subtract(expected).abs().compareTo(new BigDecimal("1e-9")) < 0;
    }

    private static ResultSheet first(List<Finding> findings) {
        return CostReport.of(COSTED, findings).sheets().get(0);
    }

    private static List<String> texts(ResultSheet sheet) {
        List<String> all = new ArrayList<>();
        sheet.cells()
                .values()
                .forEach(row -> row.values().forEach(cell -> {
                    if (cell.content() instanceof ResultSheet.Text text) {
                        all.add(text.text());
                    }
                }));
        return all;
    }

    private static List<BigDecimal> numbers(ResultSheet sheet) {
        List<BigDecimal> all = new ArrayList<>();
        sheet.cells()
                .values()
                .forEach(row -> row.values().forEach(cell -> {
                    if (cell.content() instanceof ResultSheet.Value value) {
                        all.add(value.expr().value());
                    }
                }));
        return all;
    }
}
