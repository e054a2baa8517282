package perkilo.report.prices;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.costing.CostEffect;
import perkilo.offers.history.PriceChanges;
import perkilo.origin.Account;
import perkilo.origin.Figure;
import perkilo.origin.Finding;
import perkilo.report.cost.MessagesSheet;
import perkilo.report.cost.WhatWasRead;
import perkilo.sheet.Report;
import perkilo.sheet.ResultSheet;

/** The sheets about changed prices. */
public final class PriceChangesReport {

    private PriceChangesReport() {}

    /**
     * The sheets.
     *
     * @param effect of the changes on a book's runs; null without a book
     * @param ageLimit days after which a quote is old
     * @param account what became of everything in the files
     * @param findings all findings, those of the reader included
     */
    public static Report of(
            PriceChanges changes,
            @Nullable CostEffect effect,
            Figure ageLimit,
            Account account,
            List<Finding> findings) {
        List<ResultSheet> sheets = new ArrayList<>();
        sheets.add(new ChangesSheet(changes, effect, ageLimit).sheet());
        WhatWasRead.add(sheets, account);
        Report.Said said = new Report.Said("prices", findings);
        sheets.add(MessagesSheet.of(said));
        return new Report(sheets, said);
    }
}
