package perkilo.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import perkilo.orderplan.OrderOutcome;
import perkilo.orderplan.OrderPlan;
import perkilo.orderplan.Reasons;
import perkilo.origin.Finding;
import perkilo.report.order.OrdersTable;
import perkilo.report.order.PlanFacts;
import perkilo.report.order.StockTable;
import perkilo.report.order.UnmetTables;
import perkilo.report.order.WhyTables;

/** Orders as JSON. */
public final class OrderJson {

    private OrderJson() {}

    /**
     * Orders with everything that was found.
     *
     * @param reasons what else could have been done; {@link Reasons#NONE} if that was not computed
     */
    public static ObjectNode of(OrderOutcome.Planned planned, Reasons reasons, List<Finding> findings) {
        OrderPlan plan = planned.plan();
        String home = planned.book().settings().home().getCurrencyCode();
        ObjectNode answer = Json.object()
                .put("homeCurrency", home)
                .put("costingDate", planned.book().settings().costingDate().toString())
                .put("answer", plan.answer(home));
        answer.set("days", Json.texts(plan.days()));
        answer.set("orders", TableJson.array(OrdersTable.of(planned)));
        answer.set("late", TableJson.array(UnmetTables.LATE.with(planned.unmet().late())));
        answer.set(
                "notCovered",
                TableJson.array(UnmetTables.NOT_COVERED.with(planned.unmet().notCovered())));
        answer.set("stock", TableJson.array(StockTable.of(plan)));
        answer.set("plan", TableJson.object(PlanFacts.of(plan)));
        answer.set("why", reasons.isEmpty() ? null : WhyJson.of(new WhyTables(planned, reasons)));
        answer.set("reading", Json.reading(planned.book().account()));
        answer.set("messages", Json.messages(findings));
        return answer;
    }
}
