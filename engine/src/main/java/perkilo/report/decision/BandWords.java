package perkilo.report.decision;

import java.util.stream.Collectors;
import perkilo.decision.RiskBand;
import perkilo.decision.RiskBands;

/** A risk band in sentences. */
public final class BandWords {

    private BandWords() {}

    /** Why there is no band, and what would give one. */
    public static String missing(RiskBand band) {
        return band.lacking().stream()
                .map(lack -> reason(lack, band.horizonDays()))
                .collect(Collectors.joining(" "));
    }

    private static String reason(RiskBand.Lack lack, int days) {
        if (lack instanceof RiskBand.Lack.Rates rates) {
            return DecisionMessages.tooFewRates(rates.code(), rates.days(), RiskBands.LEAST_DAYS);
        }
        if (lack instanceof RiskBand.Lack.Windows windows) {
            return DecisionMessages.noWindow(days, windows.codes());
        }
        return DecisionMessages.nothingMoves(days);
    }

    /**
     * The band in one line.
     *
     * @param units the size of the run
     */
    public static String inShort(RiskBand band, RiskBand.Figures known, long units) {
        return DecisionMessages.bandInShort(
                band.horizonDays(),
                known.p5(),
                known.p95(),
                band.cost().home().getCurrencyCode(),
                units,
                known.windows(),
                known.from(),
                known.to());
    }

    static String windows(RiskBand band, RiskBand.Figures known) {
        return DecisionMessages.windows(known.windows(), band.horizonDays(), known.from(), known.to());
    }

    static String still(RiskBand band) {
        return DecisionMessages.still(band.still(), band.horizonDays());
    }
}
