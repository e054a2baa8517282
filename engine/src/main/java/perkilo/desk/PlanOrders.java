package perkilo.desk;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import perkilo.model.Book;
import perkilo.model.Gaps;
import perkilo.orderplan.LeadTimes;
import perkilo.orderplan.OrderBook;
import perkilo.orderplan.OrderOutcome;
import perkilo.orderplan.Reasons;
import perkilo.orderplan.WhyThis;
import perkilo.origin.Finding;
import perkilo.origin.Reading;
import perkilo.purchasing.SearchLimits;

/** Service that plans the purchases for all demand of a book. */
public final class PlanOrders {

    /**
     * Reads a book and plans its orders; {@link #explain} then finds the reasons.
     *
     * @throws IOException if a file cannot be read
     */
    public OrderAnswer plan(OrderRequest request, Watch watch) throws IOException {
        Reading<Book> reading = BookReading.ofNamed(request.sources(), request.today(), watch);
        List<Finding> findings = new ArrayList<>(reading.findings());
        Gaps gaps = reading.value().gaps();
        if (gaps.isEverything() || gaps.has(Gaps.Kind.ORDERS)) {
            return new OrderAnswer.BadInput(reading.account(), findings);
        }
        findings.addAll(LeadTimes.unknown(reading.value()));
        Watched planning = new Watched(watch, Stage.PLANNING, 1);
        planning.accept(0);
        SearchLimits limits = new SearchLimits(request.search(), planning);
        OrderOutcome outcome = new OrderBook(Planners.forOrders(), limits).plan(reading.value());
        planning.accept(1);
        findings.addAll(outcome.findings());
        if (outcome instanceof OrderOutcome.Planned planned) {
            return new OrderAnswer.Planned(planned, Reasons.NONE, findings);
        }
        boolean badInput = outcome instanceof OrderOutcome.NoPlan none && none.badInput();
        return badInput ? new OrderAnswer.BadInput(reading.account(), findings) : new OrderAnswer.NoPlan(findings);
    }

    /**
     * Looks into what else could have been done, and what that would cost.
     *
     * @param answer a plan, which stays as it is
     */
    public OrderAnswer.Planned explain(OrderAnswer.Planned answer, WhyRequest request, Watch watch) {
        if (request.isNone() || watch.isCancelled()) {
            return answer;
        }
        Watched asking = new Watched(watch, Stage.ASKING, 0);
        Duration time = request.time();
        WhyThis.Limits limits =
                time == null ? WhyThis.Limits.ofWork(request.times(), asking) : WhyThis.Limits.within(time, asking);
        return answer.with(new WhyThis(asking.counting(Planners.forOrders()), limits).of(answer.planned()));
    }
}
