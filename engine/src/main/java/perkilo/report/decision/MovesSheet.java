package perkilo.report.decision;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.costing.RunAnswer;
import perkilo.decision.CostMoves;
import perkilo.decision.RiskBand;
import perkilo.decision.Share;
import perkilo.decision.Swing;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.report.part.Lines;
import perkilo.sheet.Chart;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.Sign;
import perkilo.sheet.table.Placed;

/** What moves the cost: a block for each run, with the factors by the width of their swing, and the shares. */
public final class MovesSheet {

    private static final String NAME = "What moves the cost";

    /** The most bars of a chart. */
    private static final int BARS = 12;

    private static final int CHART_ROWS = 17;
    private static final int CHART_COLUMNS = 3;

    private final SheetBuilder sheet = new SheetBuilder(NAME);
    private final Lines lines = new Lines(sheet, 5);
    private final Expr move;
    private final boolean replanned;
    private final Set<String> said = new HashSet<>();

    private MovesSheet(Figure sensitivity, boolean replanned) {
        this.replanned = replanned;
        sheet.title(0, NAME).landscape();
        sheet.hint(
                1,
                "Each line moves one thing down and up, and shows the cost of one unit (of one kilogram where nothing is"
                        + " filled). The widest swing comes first.");
        sheet.hint(
                2,
                "The purchase of Cost detail is kept: the packs, and the charges for each whole order. \"Not covered\": more is"
                        + " needed than is bought. Fill, losses and run size are values of the last run.");
        sheet.hint(3, DecisionMessages.plannedAnew(replanned));
        this.move = lines.figure(
                "Moved down and up by",
                Expr.input(sensitivity),
                NumberFormat.PERCENT,
                "",
                "Sensitivity % in Settings",
                sensitivity.origin());
        lines.skip(1);
    }

    /**
     * The sheet.
     *
     * @param decisions what each complete run depends on
     * @param figures the cells of the same runs
     * @param sensitivity how far each factor is moved
     * @param incomplete the other runs
     */
    public static ResultSheet of(
            Decisions decisions, List<RunFigures> figures, Figure sensitivity, List<RunAnswer> incomplete) {
        List<CostMoves> moves = decisions.moves();
        MovesSheet sheet = new MovesSheet(sensitivity, decisions.replanned());
        for (RunAnswer answer : incomplete) {
            Origin first = answer.missing().get(0).origin();
            String words = Sign.ATTENTION + " " + answer.title() + ": " + answer.lacks(BARS);
            sheet.sheet.text(sheet.lines.next(), SheetBuilder.FIRST_COLUMN, words, Look.ERROR, first);
            sheet.lines.skip(1);
        }
        boolean first = true;
        for (int at = 0; at < moves.size(); at++) {
            if (!first) {
                sheet.sheet.pageBreakBefore(sheet.lines.next());
            }
            first = false;
            sheet.block(moves.get(at), decisions.band(moves.get(at).cost()), figures.get(at));
        }
        return sheet.sheet.build();
    }

    private void block(CostMoves moves, @Nullable RiskBand band, RunFigures figures) {
        sheet.sentence(lines.next(), SheetBuilder.FIRST_COLUMN, Look.SECTION, figures.origin(), figures.title());
        lines.skip(1);
        if (!moves.swings().isEmpty()) {
            sheet.answer(lines.next(), Origin.NONE, answer(moves, figures));
            lines.skip(1);
        }
        SwingTable swings = new SwingTable(figures, move);
        Placed<Swing> ranked = lines.write(lines.place(swings.onSheet(replanned), withPast(moves.swings(), band)));
        lines.skip(1);
        if (band != null) {
            BandLines.write(band, figures, lines, said);
        }
        ShareTable shares = new ShareTable(figures);
        int top = lines.next();
        Placed<Share> parts = lines.write(lines.place(shares.onSheet(), moves.shares()));
        chart(ranked, swings, parts.nextColumn(), top, figures);
        lines.skip(Math.max(1, top + CHART_ROWS + 1 - lines.next()));
    }

    /** The factors, each followed by the same as it moved before, where that is known. */
    private static List<Swing> withPast(List<Swing> swings, @Nullable RiskBand band) {
        if (band == null || band.moved().isEmpty()) {
            return swings;
        }
        List<Swing> all = new ArrayList<>();
        for (Swing swing : swings) {
            all.add(swing);
            Swing before = swing.asBefore(band);
            if (before != null) {
                all.add(before);
            }
        }
        return all;
    }

    private List<ResultSheet.Part> answer(CostMoves moves, RunFigures figures) {
        List<ResultSheet.Part> parts = new ArrayList<>();
        boolean filled = figures.cost().needs().units() != null;
        String home = figures.cost().home().getCurrencyCode();
        parts.add(new ResultSheet.Words((filled ? "A unit costs " : "A kilogram costs ")));
        parts.add(new ResultSheet.Fixed(figures.ofOne(), 4));
        String first = moves.swings().get(0).factor().name();
        parts.add(new ResultSheet.Words(" " + home + ". It depends most on: " + first + "."));
        return parts;
    }

    private void chart(Placed<Swing> ranked, SwingTable swings, int left, int top, RunFigures figures) {
        if (ranked.rows().isEmpty()) {
            return;
        }
        boolean filled = figures.cost().needs().units() != null;
        String axis = figures.cost().home().getCurrencyCode() + (filled ? " per unit" : " per kg");
        int last = Math.min(BARS, ranked.rows().size()) - 1;
        Chart.Range names = ranked.range(swings.factor, 0, last);
        sheet.chart(new Chart(
                Chart.Kind.STACKED_BARS,
                "Change of the cost, purchase kept",
                new Chart.Axes("", axis, new NumberFormat("0.00"), false),
                List.of(
                        new Chart.Series("moved down", names, ranked.range(swings.changeDown, 0, last)),
                        new Chart.Series("moved up", names, ranked.range(swings.changeUp, 0, last))),
                new Chart.Place(top, left, top + CHART_ROWS - 1, left + CHART_COLUMNS - 1)));
    }
}
