package perkilo.report.order;

import java.util.List;
import perkilo.origin.Finding;
import perkilo.report.Report;
import perkilo.report.cost.MessagesSheet;
import perkilo.supply.OrderOutcome;

/** The sheets that answer what to order, from whom and when. */
public final class OrderReport {

    private OrderReport() {}

    /**
     * The sheets for a plan.
     *
     * @param planned what is planned
     * @param findings everything that a person should know, of the reading too
     */
    public static Report of(OrderOutcome.Planned planned, List<Finding> findings) {
        RunsSheet runs = RunsSheet.of(planned);
        SupplierOrdersSheet orders = SupplierOrdersSheet.of(planned);
        StockSheet stock = StockSheet.of(planned, runs.needs(), orders.lines());
        return new Report(List.of(
                PlanSheet.of(planned, orders, stock),
                orders.sheet(),
                stock.sheet(),
                runs.sheet(),
                MessagesSheet.of(findings)));
    }
}
