package perkilo.report.cost;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import perkilo.costing.CostOutcome;
import perkilo.costing.CostRuns;
import perkilo.model.Book;
import perkilo.model.Run;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.purchasing.SearchLimits;
import perkilo.purchasing.search.CheapestPlan;
import perkilo.purchasing.search.quick.QuickPlanner;
import perkilo.reading.BookReader;
import perkilo.reading.Sources;
import perkilo.sheet.Chart;
import perkilo.sheet.ResultSheet;

/** The summary of runs that were listed size by size, with bulk of the same name in between. */
final class SummarySheetTest {

    private final ResultSheet summary;

    SummarySheetTest() throws IOException {
        summary = summary();
    }

    private static ResultSheet summary() throws IOException {
        Book book = new BookReader()
                .read(
                        new Sources(Path.of("../workbook-templates/launch.xlsx"), List.of(), null, null),
                        LocalDate.of(2026, 11, 20))
                .value();
        List<Run> runs = List.of(
                units("Hand balm", 5000),
                units("Face oil", 500),
                new Run.OfBulk("Hand balm", Figure.of("40"), Origin.NONE),
                units("Hand balm", 300),
                units("Face oil", 2000));
        CostOutcome.Costed costed = (CostOutcome.Costed)
                new CostRuns(new QuickPlanner(new CheapestPlan()), SearchLimits.usual()).cost(book.withRuns(runs));
        return CostReport.of(costed, List.of()).sheets().stream()
                .filter(sheet -> sheet.name().equals("Cost summary"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void both_charts_are_drawn_and_each_product_is_one_line_that_rises_in_size() {
        assertThat(summary.charts())
                .extracting(Chart::title)
                .containsExactly("Cost per unit against run size", "What a unit costs, by head");
        assertThat(summary.charts().get(0).series())
                .extracting(Chart.Series::name)
                .containsExactly("Hand balm", "Face oil");
        assertThat(units(summary.charts().get(0).series().get(0))).containsExactly("300", "5000");
        assertThat(units(summary.charts().get(0).series().get(1))).containsExactly("500", "2000");
    }

    private List<String> units(Chart.Series series) {
        String[] corners = series.across().range().replace("$", "").split(":", -1);
        int first = Integer.parseInt(corners[0].substring(1)) - 1;
        int last = Integer.parseInt(corners[1].substring(1)) - 1;
        List<String> units = new ArrayList<>();
        for (int row = first; row <= last; row++) {
            ResultSheet.Cell cell =
                    requireNonNull(requireNonNull(summary.cells().get(row)).get(1));
            units.add(((ResultSheet.Value) cell.content())
                    .expr()
                    .value()
                    .stripTrailingZeros()
                    .toPlainString());
        }
        return units;
    }

    private static Run units(String product, int units) {
        return new Run.OfProduct(product, Figure.of(BigDecimal.valueOf(units)), Origin.NONE);
    }
}
