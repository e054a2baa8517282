package perkilo.desk;

import java.util.List;
import perkilo.costing.CostOutcome;
import perkilo.decision.PlanAndActual;
import perkilo.decision.Variances;
import perkilo.origin.Account;
import perkilo.origin.Finding;
import perkilo.origin.SameCause;
import perkilo.report.answer.CompareReport;
import perkilo.sheet.Report;

/** The outcome of comparing two costings. */
public sealed interface CompareAnswer {

    /** Everything that a person should know, also from the reading. */
    List<Finding> findings();

    /** What became of everything in the later files. */
    Account account();

    /**
     * At least one run can be compared.
     *
     * @param after the later costs
     * @param from what before is, in words
     * @param to what after is, in words
     * @param variances of each run
     * @param actuals what each run really took, by item; none where two costings are compared
     * @param findings everything that a person should know
     */
    record Compared(
            CostOutcome.Costed after,
            String from,
            String to,
            Variances variances,
            List<PlanAndActual> actuals,
            List<Finding> findings)
            implements CompareAnswer {

        public Compared {
            actuals = List.copyOf(actuals);
            findings = SameCause.once(findings);
        }

        /** Whether every run was compared and nothing has an error. */
        public boolean isComplete() {
            return variances.unmatched().isEmpty() && findings.stream().noneMatch(Finding::isError);
        }

        @Override
        public Account account() {
            return after.book().account();
        }

        /** The result sheets. */
        public Report report() {
            String home = after.book().settings().home().getCurrencyCode();
            return CompareReport.of(home, from, to, variances, actuals, account(), findings);
        }
    }

    /** Nothing can be compared; at least one finding is an error. */
    record Nothing(Account account, List<Finding> findings) implements CompareAnswer {

        public Nothing {
            findings = SameCause.once(findings);
        }
    }

    /** The workbook has no actuals that it could be compared with. */
    record NoActuals(Account account, List<Finding> findings) implements CompareAnswer {

        public NoActuals {
            findings = SameCause.once(findings);
        }
    }
}
