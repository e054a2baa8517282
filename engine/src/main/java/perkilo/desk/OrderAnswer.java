package perkilo.desk;

import java.util.List;
import perkilo.orderplan.OrderOutcome;
import perkilo.orderplan.Reasons;
import perkilo.origin.Finding;
import perkilo.report.order.OrderReport;
import perkilo.sheet.Report;

/** What planning the orders of a book came to. */
public sealed interface OrderAnswer {

    /** Everything that a person should know, of the reading too. */
    List<Finding> findings();

    /**
     * There is a plan; where the search was stopped, it is the best so far and not proven.
     *
     * @param planned what to order
     * @param reasons what else could have been done
     * @param findings everything that a person should know
     */
    record Planned(OrderOutcome.Planned planned, Reasons reasons, List<Finding> findings) implements OrderAnswer {

        public Planned {
            findings = List.copyOf(findings);
        }

        /** The result sheets. */
        public Report report() {
            return OrderReport.of(planned, reasons, findings);
        }
    }

    /** The book has errors; at least one finding is one. */
    record BadInput(List<Finding> findings) implements OrderAnswer {

        public BadInput {
            findings = List.copyOf(findings);
        }
    }

    /** Nothing that can be ordered covers every need; at least one finding is an error. */
    record NoPlan(List<Finding> findings) implements OrderAnswer {

        public NoPlan {
            findings = List.copyOf(findings);
        }
    }
}
