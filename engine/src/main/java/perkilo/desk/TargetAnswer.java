package perkilo.desk;

import java.util.List;
import perkilo.costing.CostOutcome;
import perkilo.decision.TargetCost;
import perkilo.origin.Account;
import perkilo.origin.Finding;
import perkilo.origin.SameCause;
import perkilo.report.answer.TargetReport;
import perkilo.sheet.Report;

/** The outcome of asking what a unit may cost. */
public sealed interface TargetAnswer {

    /** Everything that a person should know, also from the reading. */
    List<Finding> findings();

    /** What became of everything in the files. */
    Account account();

    /**
     * There is at least one product with a target.
     *
     * @param costed the costs as they are
     * @param targets one for each complete run of such a product
     * @param findings everything that a person should know
     */
    record Found(CostOutcome.Costed costed, List<TargetCost> targets, List<Finding> findings) implements TargetAnswer {

        public Found {
            targets = List.copyOf(targets);
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
            String home = costed.book().settings().home().getCurrencyCode();
            return TargetReport.of(home, targets, account(), findings);
        }
    }

    /** Nothing can be answered; at least one finding is an error. */
    record Nothing(Account account, List<Finding> findings) implements TargetAnswer {

        public Nothing {
            findings = SameCause.once(findings);
        }
    }
}
