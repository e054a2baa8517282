package perkilo.desk;

import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.costing.CostEffect;
import perkilo.offers.history.PriceChanges;
import perkilo.origin.Account;
import perkilo.origin.Figure;
import perkilo.origin.Finding;
import perkilo.origin.SameCause;
import perkilo.report.prices.PriceChangesReport;
import perkilo.sheet.Report;

/** The outcome of comparing price lists. */
public sealed interface PriceChangesAnswer {

    /** Everything that a person should know, also from the reading. */
    List<Finding> findings();

    /** What became of everything in the files; nothing where there is no answer for another reason than the files. */
    default Account account() {
        return Account.NONE;
    }

    /**
     * The changes.
     *
     * @param changes of prices
     * @param effect what they do to the costs of a workbook; null if no workbook was named
     * @param priceAgeLimit the age in days above which a price is marked as old
     * @param account what became of everything in the files
     * @param findings everything that a person should know
     */
    record Changed(
            PriceChanges changes,
            @Nullable CostEffect effect,
            Figure priceAgeLimit,
            Account account,
            List<Finding> findings)
            implements PriceChangesAnswer {

        public Changed {
            findings = SameCause.once(findings);
        }

        /** The result sheets. */
        public Report report() {
            return PriceChangesReport.of(changes, effect, priceAgeLimit, account, findings);
        }
    }

    /** The lists or the book have errors; at least one finding is an error. */
    record BadInput(Account account, List<Finding> findings) implements PriceChangesAnswer {

        public BadInput {
            findings = SameCause.once(findings);
        }
    }

    /** Something cannot be bought at present prices; at least one finding is an error. */
    record NoPurchase(List<Finding> findings) implements PriceChangesAnswer {

        public NoPurchase {
            findings = SameCause.once(findings);
        }
    }
}
