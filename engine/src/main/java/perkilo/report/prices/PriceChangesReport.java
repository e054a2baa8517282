package perkilo.report.prices;

import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.costing.CostEffect;
import perkilo.offers.history.PriceChanges;
import perkilo.origin.Figure;
import perkilo.origin.Finding;
import perkilo.report.cost.MessagesSheet;
import perkilo.sheet.Report;

/** The sheets about changed prices. */
public final class PriceChangesReport {

    private PriceChangesReport() {}

    /**
     * The sheets.
     *
     * @param effect of the changes on a book's runs; null without a book
     * @param ageLimit days after which a quote is old
     * @param findings all findings, those of the reader included
     */
    public static Report of(
            PriceChanges changes, @Nullable CostEffect effect, Figure ageLimit, List<Finding> findings) {
        return new Report(List.of(new ChangesSheet(changes, effect, ageLimit).sheet(), MessagesSheet.of(findings)));
    }
}
