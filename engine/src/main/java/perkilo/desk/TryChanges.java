package perkilo.desk;

import java.util.List;
import perkilo.costing.CostOutcome;
import perkilo.costing.CostRuns;
import perkilo.costing.RunCost;
import perkilo.decision.Scenario;
import perkilo.model.Book;
import perkilo.model.Run;
import perkilo.model.ScenarioLine;
import perkilo.origin.Finding;
import perkilo.origin.Reading;
import perkilo.purchasing.SearchLimits;

/**
 * Service that costs a workbook as if some of its numbers were others: every purchase is planned anew. Nothing is
 * written.
 */
public final class TryChanges {

    /**
     * The outcome.
     *
     * @param answer the costs with the changes
     * @param problems why changes were not understood; if there are any, the answer is without changes
     */
    public record Tried(CostAnswer answer, List<Finding> problems) {

        public Tried {
            problems = List.copyOf(problems);
        }
    }

    /** A book with changes, and why some were not understood. */
    private record Edited(Book book, List<Finding> problems) {}

    /**
     * Costs a workbook that was read before.
     *
     * @param changes in the words of the sheet Scenarios; none to cost it as it is, with the scenarios of that sheet
     */
    public Tried cost(OpenedBook opened, RunSizes sizes, List<ScenarioLine> changes, Watch watch) {
        CostBook service = new CostBook();
        Reading<Book> reading = opened.reading();
        Edited edited = edited(opened, sizes, changes);
        if (changes.isEmpty() || !edited.problems().isEmpty()) {
            return new Tried(service.cost(opened.sources().book(), reading, sizes, watch), edited.problems());
        }
        Reading<Book> changed = new Reading<>(edited.book(), reading.findings(), reading.account());
        return new Tried(service.cost(opened.sources().book(), changed, RunSizes.OF_THE_BOOK, watch), List.of());
    }

    private static Edited edited(OpenedBook opened, RunSizes sizes, List<ScenarioLine> changes) {
        Book whole = opened.reading().value();
        if (whole.gaps().isEverything() || changes.isEmpty()) {
            return new Edited(sizes.applyTo(whole), List.of());
        }
        Book book = sizes.applyTo(whole);
        Scenario.Read scenario = Scenario.of(book.withScenarios(changes));
        for (Scenario one : scenario.scenarios()) {
            book = one.edit().apply(book);
        }
        return new Edited(book.withScenarios(List.of()), scenario.findings());
    }

    /**
     * Costs the run sizes between the smallest and the largest of each product, for a curve.
     *
     * @return the complete ones; none if nothing can be costed
     */
    public List<RunCost> between(OpenedBook opened, RunSizes sizes, List<ScenarioLine> changes, Watch watch) {
        Book book = edited(opened, sizes, changes).book();
        List<Run> between = SizesBetween.of(book);
        Watched costing = new Watched(watch, Stage.COSTING, between.size());
        CostRuns coster = new CostRuns(Planners.forRuns(), SearchLimits.usual(costing));
        return coster.cost(book.withRuns(between), costing) instanceof CostOutcome.Costed costed
                ? costed.runs()
                : List.of();
    }
}
