package perkilo.desk;

import java.util.List;
import perkilo.costing.CostOutcome;
import perkilo.origin.Account;
import perkilo.origin.Finding;
import perkilo.origin.SameCause;
import perkilo.report.cost.CostReport;
import perkilo.report.decision.Decisions;
import perkilo.sheet.Report;

/** The outcome of costing one book. */
public sealed interface CostAnswer {

    /** Everything that a person should know, also from the reading. */
    List<Finding> findings();

    /** What became of everything in the files; nothing where there is no answer for another reason than the files. */
    default Account account() {
        return Account.NONE;
    }

    /**
     * Something is known of at least one run. If a search was stopped, the purchase of that run is not proven.
     *
     * @param costed the costs, and what is missing of runs that are not complete
     * @param decisions what was found out to decide by
     * @param findings everything that a person should know
     */
    record Costed(CostOutcome.Costed costed, Decisions decisions, List<Finding> findings) implements CostAnswer {

        public Costed {
            findings = SameCause.once(findings);
        }

        /** Whether every run is complete and nothing has an error. */
        public boolean isComplete() {
            return costed.isComplete() && findings.stream().noneMatch(Finding::isError);
        }

        @Override
        public Account account() {
            return costed.book().account();
        }

        /** The result sheets. */
        public Report report() {
            return CostReport.of(costed, decisions, findings);
        }
    }

    /** Every figure depends on something that has an error; at least one finding is an error. */
    record BadInput(Account account, List<Finding> findings) implements CostAnswer {

        public BadInput {
            findings = SameCause.once(findings);
        }
    }

    /** Nothing is known of any run; at least one finding is an error. */
    record NoPurchase(List<Finding> findings) implements CostAnswer {

        public NoPurchase {
            findings = SameCause.once(findings);
        }
    }
}
