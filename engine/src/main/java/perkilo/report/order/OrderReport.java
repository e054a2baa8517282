package perkilo.report.order;

import java.util.ArrayList;
import java.util.List;
import perkilo.orderplan.OrderOutcome;
import perkilo.orderplan.Reasons;
import perkilo.origin.Finding;
import perkilo.report.cost.MessagesSheet;
import perkilo.report.cost.WhatWasRead;
import perkilo.report.send.PurchaseOrders;
import perkilo.sheet.Report;
import perkilo.sheet.ResultSheet;

/** The sheets that answer what to order, from whom and when. */
public final class OrderReport {

    private OrderReport() {}

    /**
     * The sheets for a plan.
     *
     * @param planned what is planned
     * @param reasons what else could have been done; {@link Reasons#NONE} if not computed, and then there is no sheet
     *     for it
     * @param findings everything that a person should know, also from the reading
     */
    public static Report of(OrderOutcome.Planned planned, Reasons reasons, List<Finding> findings) {
        PlannedRunsSheet runs = PlannedRunsSheet.of(planned);
        SupplierOrdersSheet orders = SupplierOrdersSheet.of(planned);
        LeftoversSheet stock = LeftoversSheet.of(planned, runs.needs(), orders.lines());
        List<ResultSheet> sheets = new ArrayList<>();
        sheets.add(PlanSheet.of(planned, orders, stock));
        sheets.add(PurchaseOrders.all(
                planned.plan(),
                planned.book().settings().buyer(),
                line -> orders.line(line).packs(),
                line -> orders.line(line).price()));
        sheets.add(orders.sheet());
        sheets.add(stock.sheet());
        if (!reasons.isEmpty()) {
            sheets.add(WhySheet.of(planned, reasons));
        }
        sheets.add(runs.sheet());
        WhatWasRead.add(sheets, planned.book().account());
        Report.Said said = new Report.Said("order", findings);
        sheets.add(MessagesSheet.of(said));
        return new Report(sheets, said);
    }
}
