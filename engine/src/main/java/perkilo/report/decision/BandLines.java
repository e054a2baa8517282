package perkilo.report.decision;

import java.util.List;
import java.util.Set;
import perkilo.decision.RiskBand;
import perkilo.origin.Origin;
import perkilo.report.part.Lines;
import perkilo.sheet.Expr;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;

/** The risk band of a run, line by line; or what is missing for one. */
final class BandLines {

    private static final int DIGITS = 4;

    private BandLines() {}

    /**
     * Writes the lines.
     *
     * @param said explanations that stand above already; what is written is added
     */
    static void write(RiskBand band, RunFigures figures, Lines lines, Set<String> said) {
        RiskBand.Figures known = band.figures();
        if (known == null) {
            hint(BandWords.missing(band), lines, said);
            return;
        }
        String home = band.cost().home().getCurrencyCode();
        String unit = home + (figures.cost().needs().units() == null ? " per kg" : " per unit");
        NumberFormat money = NumberFormat.money(home, DIGITS);
        lines.sheet().answer(lines.next(), Origin.NONE, answer(band, known, home));
        lines.skip(1);
        lines.figure("5 % of the windows: at most", Expr.of(known.p5()), money, unit, "");
        lines.figure("Half of the windows: at most", Expr.of(known.p50()), money, unit, "");
        lines.figure("95 % of the windows: at most", Expr.of(known.p95()), money, unit, "");
        hint(BandWords.windows(band, known), lines, said);
        hint(BandWords.still(band), lines, said);
        lines.skip(1);
    }

    private static List<ResultSheet.Part> answer(RiskBand band, RiskBand.Figures known, String home) {
        return List.of(
                new ResultSheet.Words("In " + band.horizonDays() + " days, if all moves as in the past: "),
                new ResultSheet.Fixed(Expr.of(known.p5()), DIGITS),
                new ResultSheet.Words(" to "),
                new ResultSheet.Fixed(Expr.of(known.p95()), DIGITS),
                new ResultSheet.Words(" " + home + " in nine of ten windows."));
    }

    private static void hint(String text, Lines lines, Set<String> said) {
        if (said.add(text)) {
            lines.hint(text);
        }
    }
}
