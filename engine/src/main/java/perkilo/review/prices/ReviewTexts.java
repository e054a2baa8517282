package perkilo.review.prices;

import perkilo.origin.Counted;
import perkilo.pricelists.ListFolder;
import perkilo.pricelists.ReviewWords;
import perkilo.pricelists.TakenIn;

/** What a person reads on a review of price lists. */
public final class ReviewTexts {

    private static final String AGAIN = " Then save and close this workbook, and run perkilo prices again.";

    private ReviewTexts() {}

    static String questions(long open, long rows) {
        String onRows = rows == 0 ? "" : " The sheet Not read has " + Counted.of(rows, "row") + " to answer.";
        return open == 0
                ? "No open questions." + onRows + (rows == 0 ? " A yellow cell can still be changed." : "") + AGAIN
                : Counted.of(open, "open question") + ": answer in the yellow cells." + onRows + AGAIN;
    }

    static String prices(int left) {
        return "Every price as it was read. To change what an item means, choose your item in the yellow cell."
                + (left == 0 ? "" : " " + Counted.of(left, "more price") + " not shown here.")
                + AGAIN;
    }

    static String notRead() {
        return "Columns, rows and sheets that are not used. For a column say what it is, for a row type what its cell shall say, or ignore."
                + AGAIN;
    }

    static String readAs() {
        return "Columns that are used, and what for. To correct one, fill in the yellow cell." + AGAIN;
    }

    static String lists() {
        return "One row for each file. Supplier and dates can be corrected in the yellow cells." + AGAIN;
    }

    /** What became of a list, in words. */
    public static String state(TakenIn list) {
        ListFolder.Kept kept = list.kept();
        if (kept != null) {
            String how = kept.how() == ListFolder.Kept.How.THERE_ALREADY ? " before, unchanged" : "";
            String merged = kept.how() == ListFolder.Kept.How.MERGED ? ", together with another list of the day" : "";
            return ReviewWords.TAKEN_IN + how + ": " + Counted.of(list.prices(), "price") + " of "
                    + Counted.of(list.items(), "item") + merged;
        }
        if (list.noList()) {
            return ReviewWords.NO_LIST + ", as you answered";
        }
        return list.waitsFor() > 0
                ? "Waits for " + Counted.of(list.waitsFor(), "answer")
                : "Not taken in: "
                        + list.findings().stream()
                                .filter(finding -> finding.isError())
                                .map(finding -> finding.text())
                                .findFirst()
                                .orElse("nothing was read");
    }
}
