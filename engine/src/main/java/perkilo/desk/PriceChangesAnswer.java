package perkilo.desk;

import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.costing.CostEffect;
import perkilo.offers.history.PriceChanges;
import perkilo.origin.Figure;
import perkilo.origin.Finding;
import perkilo.report.prices.PriceChangesReport;
import perkilo.sheet.Report;

/** What rose or fell since the last price lists. */
public sealed interface PriceChangesAnswer {

    /** Everything that a person should know, of the reading too. */
    List<Finding> findings();

    /**
     * The changes.
     *
     * @param changes of prices
     * @param effect what they do to a workbook's costs; null where no workbook was named
     * @param priceAgeLimit from how many days on a price is marked as old
     * @param findings everything that a person should know
     */
    record Changed(PriceChanges changes, @Nullable CostEffect effect, Figure priceAgeLimit, List<Finding> findings)
            implements PriceChangesAnswer {

        public Changed {
            findings = List.copyOf(findings);
        }

        /** The result sheets. */
        public Report report() {
            return PriceChangesReport.of(changes, effect, priceAgeLimit, findings);
        }
    }

    /** The lists or the book have errors; at least one finding is one. */
    record BadInput(List<Finding> findings) implements PriceChangesAnswer {

        public BadInput {
            findings = List.copyOf(findings);
        }
    }

    /** At present prices something cannot be bought; at least one finding is an error. */
    record NoPurchase(List<Finding> findings) implements PriceChangesAnswer {

        public NoPurchase {
            findings = List.copyOf(findings);
        }
    }
}
