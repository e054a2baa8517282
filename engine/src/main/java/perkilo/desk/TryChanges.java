package perkilo.desk;

import java.util.List;
import perkilo.decision.Scenario;
import perkilo.model.Book;
import perkilo.model.ScenarioLine;
import perkilo.origin.Finding;
import perkilo.origin.Reading;

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

    /**
     * Costs a workbook that was read before.
     *
     * @param changes in the words of the sheet Scenarios; none to cost it as it is, with the scenarios of that sheet
     */
    public Tried cost(OpenedBook opened, RunSizes sizes, List<ScenarioLine> changes, Watch watch) {
        CostBook service = new CostBook();
        Reading<Book> reading = opened.reading();
        if (changes.isEmpty() || reading.value().gaps().isEverything()) {
            return new Tried(service.cost(opened.sources().book(), reading, sizes, watch), List.of());
        }
        Book book = sizes.applyTo(reading.value());
        Scenario.Read scenario = Scenario.of(book.withScenarios(changes));
        if (!scenario.findings().isEmpty()) {
            return new Tried(service.cost(opened.sources().book(), reading, sizes, watch), scenario.findings());
        }
        for (Scenario one : scenario.scenarios()) {
            book = one.edit().apply(book);
        }
        Reading<Book> changed = new Reading<>(book.withScenarios(List.of()), reading.findings(), reading.account());
        return new Tried(service.cost(opened.sources().book(), changed, RunSizes.OF_THE_BOOK, watch), List.of());
    }
}
