package perkilo.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import perkilo.costing.CostOutcome;
import perkilo.costing.CostRuns;
import perkilo.decision.CostMoves;
import perkilo.decision.RiskBands;
import perkilo.decision.Scenario;
import perkilo.decision.ScenarioCosts;
import perkilo.decision.SizeAdvice;
import perkilo.decision.SizeSearch;
import perkilo.decision.WhatMoves;
import perkilo.model.Book;
import perkilo.model.ScenarioLine;
import perkilo.origin.Finding;
import perkilo.origin.Reading;
import perkilo.purchasing.SearchLimits;
import perkilo.report.decision.Decisions;
import perkilo.swaps.RecipeCheck;

/** Service that costs every run of every product of one book. */
public final class CostBook {

    /**
     * Reads a book and costs its runs.
     *
     * @throws IOException if a file cannot be read
     */
    public CostAnswer cost(CostRequest request, Watch watch) throws IOException {
        Reading<Book> reading = BookReading.ofNamed(request.sources(), request.today(), watch);
        return cost(request.sources().book(), reading, request.sizes(), request.wishes(), watch);
    }

    /** Costs the runs of a book that has been read before. */
    public CostAnswer cost(Path file, Reading<Book> reading, RunSizes sizes, Watch watch) {
        return cost(file, reading, sizes, CostWishes.NONE, watch);
    }

    /** Costs the runs of a book that has been read before, with what is asked for besides. */
    public CostAnswer cost(Path file, Reading<Book> reading, RunSizes sizes, CostWishes wishes, Watch watch) {
        List<Finding> findings = new ArrayList<>(reading.findings());
        if (reading.value().gaps().isEverything()) {
            return new CostAnswer.BadInput(reading.account(), findings);
        }
        Book book = withWhatIfs(sizes.applyTo(reading.value()), wishes);
        findings.addAll(RunSizes.problems(file, book));
        if (RunSizes.isNothing(book)) {
            return new CostAnswer.BadInput(reading.account(), findings);
        }
        Watched costing = new Watched(watch, Stage.COSTING, book.runs().size());
        CostOutcome outcome = new CostRuns(Planners.forRuns(), SearchLimits.usual(costing)).cost(book, costing);
        findings.addAll(outcome.findings());
        findings.addAll(RecipeCheck.of(book));
        Scenario.Read scenarios = Scenario.of(book);
        findings.addAll(scenarios.findings());
        return outcome instanceof CostOutcome.Costed costed
                ? new CostAnswer.Costed(costed, decisions(costed, scenarios.scenarios(), wishes, watch), findings)
                : new CostAnswer.NoPurchase(findings);
    }

    private static Decisions decisions(
            CostOutcome.Costed costed, List<Scenario> scenarios, CostWishes wishes, Watch watch) {
        List<CostMoves> moves;
        if (wishes.replanned()) {
            Watched moving = new Watched(watch, Stage.MOVING, costed.runs().size());
            moves = WhatMoves.replanned(costed, Planners.forRuns(), SearchLimits.usual(moving), moving);
        } else {
            moves = WhatMoves.kept(costed);
        }
        List<SizeAdvice> sizes = null;
        if (wishes.sizes()) {
            Watched sizing = new Watched(watch, Stage.SIZES, 0);
            sizes = SizeSearch.of(costed, sizing.counting(Planners.forRuns()), SearchLimits.usual(sizing));
        }
        ScenarioCosts compared = null;
        if (!scenarios.isEmpty() && !costed.runs().isEmpty()) {
            Watched comparing = new Watched(watch, Stage.SCENARIOS, 0);
            compared = ScenarioCosts.of(
                    costed, scenarios, comparing.counting(Planners.forRuns()), SearchLimits.usual(comparing));
        }
        return new Decisions(moves, RiskBands.of(costed), wishes.replanned(), sizes, compared);
    }

    private static Book withWhatIfs(Book book, CostWishes wishes) {
        if (wishes.whatIfs().isEmpty()) {
            return book;
        }
        List<ScenarioLine> all = new ArrayList<>(book.scenarios());
        all.addAll(wishes.whatIfs());
        return book.withScenarios(all);
    }
}
