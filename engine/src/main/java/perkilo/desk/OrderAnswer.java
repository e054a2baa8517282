package perkilo.desk;

import java.util.ArrayList;
import java.util.List;
import perkilo.orderplan.OrderOutcome;
import perkilo.orderplan.Reasons;
import perkilo.origin.Account;
import perkilo.origin.Finding;
import perkilo.origin.SameCause;
import perkilo.report.order.OrderReport;
import perkilo.sheet.Report;

/** The outcome of planning the orders of a book. */
public sealed interface OrderAnswer {

    /** Everything that a person should know, also from the reading. */
    List<Finding> findings();

    /** What became of everything in the files; nothing where there is no answer for another reason than the files. */
    default Account account() {
        return Account.NONE;
    }

    /**
     * There is a plan; if the search was stopped, it is the best so far and not proven.
     *
     * @param planned what to order
     * @param reasons what else could have been done, and what that would cost
     * @param findings everything that a person should know
     */
    record Planned(OrderOutcome.Planned planned, Reasons reasons, List<Finding> findings) implements OrderAnswer {

        public Planned {
            findings = SameCause.once(findings);
        }

        /** The same plan with its reasons. */
        public Planned with(Reasons others) {
            return new Planned(planned, others, findings);
        }

        /** The same plan with more that a person should know. */
        public Planned and(List<Finding> more) {
            List<Finding> all = new ArrayList<>(findings);
            all.addAll(more);
            return new Planned(planned, reasons, all);
        }

        /** Whether every need is met in time and nothing has an error. */
        public boolean isComplete() {
            return planned.unmet().isEmpty() && findings.stream().noneMatch(Finding::isError);
        }

        @Override
        public Account account() {
            return planned.book().account();
        }

        /** The result sheets. */
        public Report report() {
            return OrderReport.of(planned, reasons, findings);
        }
    }

    /** The book has errors; at least one finding is an error. */
    record BadInput(Account account, List<Finding> findings) implements OrderAnswer {

        public BadInput {
            findings = SameCause.once(findings);
        }
    }

    /** No plan was found; at least one finding is an error. */
    record NoPlan(List<Finding> findings) implements OrderAnswer {

        public NoPlan {
            findings = SameCause.once(findings);
        }
    }
}
