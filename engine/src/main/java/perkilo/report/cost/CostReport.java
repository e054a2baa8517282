package perkilo.report.cost;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import perkilo.costing.CostOutcome;
import perkilo.decision.Moving;
import perkilo.decision.WhatMoves;
import perkilo.model.Settings;
import perkilo.origin.Finding;
import perkilo.report.decision.Decisions;
import perkilo.report.decision.MovesSheet;
import perkilo.report.decision.RunFigures;
import perkilo.report.decision.ScenarioSheet;
import perkilo.report.decision.SizesSheet;
import perkilo.report.inputs.Effects;
import perkilo.report.inputs.InputsWatch;
import perkilo.sheet.Report;
import perkilo.sheet.ResultSheet;

/** The sheets with the cost of each run. */
public final class CostReport {

    /** Sheets with values that follow no input. */
    private static final Set<String> FIXED = Set.of("What moves the cost", "Which size", "Scenarios compared");

    private CostReport() {}

    /**
     * The sheets for costs, with what the costs depend on while the purchases are kept.
     *
     * @param costed the costs
     * @param findings all findings, those of the reader included
     */
    public static Report of(CostOutcome.Costed costed, List<Finding> findings) {
        return of(costed, Decisions.usual(WhatMoves.kept(costed)), findings);
    }

    /**
     * The sheets for costs.
     *
     * @param costed the costs
     * @param decisions what was found out to decide by
     * @param findings all findings, those of the reader included
     */
    public static Report of(CostOutcome.Costed costed, Decisions decisions, List<Finding> findings) {
        DetailSheet detail = DetailSheet.of(costed);
        Settings settings = costed.book().settings();
        String home = settings.home().getCurrencyCode();
        List<ResultSheet> sheets = new ArrayList<>(List.of(SummarySheet.of(costed, detail)));
        sheets.add(detail.sheet());
        sheets.add(LadderSheet.of(home, detail.runs(), costed.incomplete()));
        List<RunFigures> figures = new ArrayList<>();
        for (RunCells run : detail.runs()) {
            figures.add(new DecisionCells(
                    run, new Moving(costed.market(), run.cost().purchase())));
        }
        if (!decisions.moves().isEmpty()) {
            sheets.add(MovesSheet.of(decisions, figures, settings.sensitivity(), costed.incomplete()));
        }
        if (decisions.sizes() != null) {
            sheets.add(SizesSheet.of(home, decisions.sizes()));
        }
        if (decisions.scenarios() != null && !figures.isEmpty()) {
            sheets.add(ScenarioSheet.of(decisions.scenarios(), home, figures));
        }
        ResultSheet pages = ProductPages.of(costed, decisions, detail.runs(), figures, findings);
        if (pages != null) {
            sheets.add(0, pages);
        }
        WhatWasRead.add(sheets, costed.book().account());
        Report.Said said = new Report.Said("cost", findings);
        sheets.add(MessagesSheet.of(said));
        InputsWatch watch = new InputsWatch(
                "cost",
                Effects.ofCosts(),
                FIXED,
                List.of(RecipeSums.of(costed), InputsWatch.packs(detail.packFaults())));
        return new Report(watch.on(sheets, costed.book().account()), said);
    }
}
