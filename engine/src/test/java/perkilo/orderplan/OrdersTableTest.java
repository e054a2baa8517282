package perkilo.orderplan;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import perkilo.json.OrderJson;
import perkilo.purchasing.SearchLimits;
import perkilo.purchasing.search.CheapestPlan;
import perkilo.report.order.OrderReport;
import perkilo.report.order.OrdersTable;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Table;

/** The orders of a plan are the same on the sheet, in JSON and on the terminal. */
final class OrdersTableTest {

    private static final int FIRST_ORDER = 15;

    private final OrderOutcome.Planned planned =
            (OrderOutcome.Planned) new OrderBook(new CheapestPlan(), SearchLimits.usual()).plan(Balm.book());
    private final JsonNode json = OrderJson.of(planned, Reasons.NONE, List.of()).path("orders");
    private final ResultSheet sheet =
            OrderReport.of(planned, Reasons.NONE, List.of()).sheets().get(0);

    @Test
    void the_sheet_and_json_show_the_same_orders() {
        assertThat(json).hasSize(4);
        for (int index = 0; index < json.size(); index++) {
            JsonNode order = json.get(index);
            assertThat(words(index, 0)).isEqualTo(order.path("supplier").textValue());
            assertThat(day(index, 1)).isEqualTo(order.path("orderBy").textValue());
            assertThat(day(index, 2)).isEqualTo(order.path("arrivesOn").textValue());
            assertThat(day(index, 3)).isEqualTo(order.path("neededBy").textValue());
            assertThat(figure(index, 4))
                    .isEqualByComparingTo(new BigDecimal(order.path("lines").size()));
            assertThat(figure(index, 5))
                    .isEqualByComparingTo(order.path("goods").textValue());
            assertThat(figure(index, 6))
                    .isCloseTo(
                            new BigDecimal(order.path("landedHome").textValue()),
                            Offset.offset(new BigDecimal("0.000001")));
        }
    }

    @Test
    void the_terminal_shows_a_line_for_each_order() {
        Table.Filled<SupplierOrder> orders = OrdersTable.of(planned);
        List<Column<SupplierOrder>> shown =
                orders.table().columns().stream().filter(Column::isOnTerminal).toList();

        assertThat(shown)
                .extracting(Column::terminalHeading)
                .containsExactly("Supplier", "Order by", "Arrives on", "Needed by", "Lines", "Goods", "Landed, EUR");
        assertThat(shown)
                .extracting(column -> column.terminalOf(orders.rows().get(0)))
                .startsWith("Oleo", "2026-12-22", "2027-01-01", "2027-01-01")
                .contains(Integer.toString(json.get(0).path("lines").size()));
        assertThat(orders.rows()).hasSize(4);
    }

    private ResultSheet.Content content(int order, int column) {
        return Objects.requireNonNull(Objects.requireNonNull(sheet.cells().get(FIRST_ORDER + order))
                        .get(column))
                .content();
    }

    private String words(int order, int column) {
        return ((ResultSheet.Text) content(order, column)).text();
    }

    /** A date cell holds the days since 1899-12-30. */
    private String day(int order, int column) {
        return LocalDate.of(1899, 12, 30)
                .plusDays(figure(order, column).longValueExact())
                .toString();
    }

    private BigDecimal figure(int order, int column) {
        return ((ResultSheet.Value) content(order, column)).expr().value();
    }
}
