package perkilo.live;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import perkilo.costing.CostOutcome;
import perkilo.costing.CostRuns;
import perkilo.model.Book;
import perkilo.origin.Reading;
import perkilo.purchasing.PlanCost;
import perkilo.purchasing.PlanOutcome;
import perkilo.purchasing.PlanPurchases;
import perkilo.purchasing.PurchasePlan;
import perkilo.purchasing.SearchLimits;
import perkilo.purchasing.search.CheapestPlan;
import perkilo.reading.BookReader;
import perkilo.reading.Sources;
import perkilo.report.cost.CostReport;
import perkilo.sheet.Report;
import perkilo.sheet.ResultSheet;
import perkilo.xlsx.write.WorkbookWriter;

/**
 * Each edit of a table is made in a workbook of costs, which an office suite recalculates: the costs are those of a new
 * run on the changed workbook, or the first line says that they are not.
 */
@Tag("office")
final class LiveCostTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    @TempDir
    private Path folder = Path.of("");

    @Test
    void each_edit_is_followed_or_said() throws Exception {
        List<Edit> edits = Edit.of("cost.csv");
        Path book = LiveBook.write(folder.resolve("book.xlsx"));
        CostOutcome.Costed costed = (CostOutcome.Costed) cost(read(book).value(), new CheapestPlan());
        Report report = CostReport.of(costed, List.of());
        Path result = folder.resolve("book-costed.xlsx");
        new WorkbookWriter().write(book, report, result);
        List<String> names = report.sheets().stream().map(ResultSheet::name).toList();
        List<Dump> dumps = new OfficeEdits(folder).of(result, names, edits);
        assertThat(dumps.get(0).errors()).isEmpty();
        assertThat(Sheets.difference(report, dumps.get(0))).isEmpty();

        TreeMap<String, Integer> counts = new TreeMap<>();
        List<String> wrong = new ArrayList<>();
        for (int i = 0; i < edits.size(); i++) {
            String outcome = outcome(edits.get(i), book, costed, dumps.get(i + 1));
            counts.merge(outcome.replaceAll(":.*", ""), 1, Integer::sum);
            if (!outcome.equals(edits.get(i).outcome())) {
                wrong.add(edits.get(i) + " should be " + edits.get(i).outcome() + ", is " + outcome);
            }
        }
        assertThat(wrong).as(counts.toString()).isEmpty();
    }

    /** What the sheets do after an edit: follow, say something, or neither. */
    private String outcome(Edit edit, Path book, CostOutcome.Costed before, Dump dump) throws IOException {
        if (!dump.errors().isEmpty()) {
            return "error: " + dump.errors().get(0);
        }
        String first = dump.firstLines("Cost summary", 2);
        if (first.contains("Inputs changed")) {
            return "said";
        }
        if (first.contains("Packs: ")) {
            return "packs";
        }
        if (first.contains("Recipes: ")) {
            return "recipe";
        }
        if (!edit.isOfInputs()) {
            return "follows";
        }
        Path changed = folder.resolve("changed.xlsx");
        edit.in(book, changed);
        String kept = difference(changed, samePurchases(before), dump);
        boolean choice = first.contains("cheapest");
        String anew = kept.isEmpty() && choice ? "" : difference(changed, new CheapestPlan(), dump);
        if (choice) {
            return kept.isEmpty() ? "choice" : "silent: " + kept;
        }
        return anew.isEmpty() ? "follows" : kept.isEmpty() ? "silent choice" : "silent: " + kept;
    }

    private static String difference(Path changed, PlanPurchases planner, Dump dump) throws IOException {
        Reading<Book> reading = read(changed);
        if (reading.hasErrors()) {
            return "the engine reports " + reading.findings().get(0).text();
        }
        try {
            CostOutcome outcome = cost(reading.value(), planner);
            return outcome instanceof CostOutcome.Costed costed
                    ? Sheets.difference(CostReport.of(costed, List.of()), dump)
                    : "the engine finds no purchase";
        } catch (RuntimeException notKept) {
            return "the purchase cannot be kept: " + notKept;
        }
    }

    private static Reading<Book> read(Path file) throws IOException {
        return new BookReader().read(new Sources(file, List.of(), null, null), DAY);
    }

    private static CostOutcome cost(Book book, PlanPurchases planner) {
        return new CostRuns(planner, SearchLimits.usual()).cost(book);
    }

    /** Buys for each run what was bought before, in the order of the runs. */
    private static PlanPurchases samePurchases(CostOutcome.Costed before) {
        List<PurchasePlan> plans =
                before.runs().stream().map(run -> run.purchase().plan()).toList();
        int[] next = {0};
        return (problem, limits) -> {
            PurchasePlan plan = plans.get(next[0]++);
            PlanCost cost = PlanCost.of(problem, plan);
            return new PlanOutcome.Proven(plan, cost, cost.objective());
        };
    }
}
