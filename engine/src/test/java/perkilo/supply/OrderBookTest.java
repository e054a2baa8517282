package perkilo.supply;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import perkilo.json.Json;
import perkilo.json.OrderJson;
import perkilo.ordering.CheapestPlan;
import perkilo.purchasing.PlanCheck;
import perkilo.purchasing.SearchLimits;
import perkilo.report.Report;
import perkilo.report.order.OrderReport;

/** Orders for a small maker, from the book to the sheets. */
final class OrderBookTest {

    @Test
    void a_plan_keeps_every_rule_and_its_sheets_compute_the_same() {
        OrderOutcome outcome = new OrderBook(new CheapestPlan(), SearchLimits.usual()).plan(Balm.book());
        outcome.findings().forEach(System.out::println);
        OrderOutcome.Planned planned = (OrderOutcome.Planned) outcome;
        System.out.println(planned.plan().answer("EUR"));
        System.out.println(Json.print(OrderJson.of(planned, planned.findings())));
        Report report = OrderReport.of(planned, planned.findings());
        assertThat(PlanCheck.violations(
                        planned.plan().basis().problem(), planned.plan().plan()))
                .isEmpty();
        assertThat(report.sheets()).hasSize(5);
    }
}
