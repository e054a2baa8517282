package perkilo.report.swap;

import java.util.List;
import perkilo.origin.Finding;
import perkilo.report.Report;
import perkilo.report.cost.MessagesSheet;
import perkilo.swaps.SwapOutcome;

/** The sheets that answer which cheaper materials could do the same job. */
public final class SwapReport {

    private SwapReport() {}

    /**
     * The sheets for swaps.
     *
     * @param found what was found
     * @param findings everything that a person should know, of the reading too
     */
    public static Report of(SwapOutcome.Found found, List<Finding> findings) {
        return new Report(List.of(
                SwapsSheet.of(found),
                BlendSheet.of(found),
                LabelSheet.of(found),
                EmollientSheet.of(found),
                MessagesSheet.of(findings)));
    }
}
