package perkilo.desk;

import java.util.List;
import perkilo.costing.CostOutcome;
import perkilo.origin.Account;
import perkilo.origin.Finding;
import perkilo.report.cost.CostReport;
import perkilo.sheet.Report;

/** The outcome of costing one book. */
public sealed interface CostAnswer {

    /** Everything that a person should know, also from the reading. */
    List<Finding> findings();

    /** What became of everything in the files; nothing where there is no answer for another reason than the files. */
    default Account account() {
        return Account.NONE;
    }

    /** Every run is costed. If a search was stopped, the purchase of that run is not proven. */
    record Costed(CostOutcome.Costed costed, List<Finding> findings) implements CostAnswer {

        public Costed {
            findings = List.copyOf(findings);
        }

        @Override
        public Account account() {
            return costed.book().account();
        }

        /** The result sheets. */
        public Report report() {
            return CostReport.of(costed, findings);
        }
    }

    /** The book has errors; at least one finding is an error. */
    record BadInput(Account account, List<Finding> findings) implements CostAnswer {

        public BadInput {
            findings = List.copyOf(findings);
        }
    }

    /** Something that is needed cannot be bought; at least one finding is an error. */
    record NoPurchase(List<Finding> findings) implements CostAnswer {

        public NoPurchase {
            findings = List.copyOf(findings);
        }
    }
}
