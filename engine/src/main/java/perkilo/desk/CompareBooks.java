package perkilo.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import perkilo.costing.CostOutcome;
import perkilo.costing.CostRuns;
import perkilo.decision.ActualRuns;
import perkilo.decision.ActualVariances;
import perkilo.decision.Variances;
import perkilo.model.Book;
import perkilo.origin.Finding;
import perkilo.origin.Reading;
import perkilo.purchasing.SearchLimits;
import perkilo.reading.Sources;

/**
 * Service that says why costs changed: between two workbooks, two days of one, or the plan and what runs really took.
 */
public final class CompareBooks {

    /**
     * Reads and costs both sides and compares their runs.
     *
     * @throws IOException if a file cannot be read
     */
    public CompareAnswer compare(CompareRequest request, Watch watch) throws IOException {
        Reading<Book> before = BookReading.ofNamed(request.before(), request.today(), watch);
        Reading<Book> after = BookReading.ofNamed(request.after(), request.today(), watch);
        List<Finding> findings = new ArrayList<>();
        CostOutcome.Costed earlier = costed(request.before(), before, request.sizes(), findings, watch);
        CostOutcome.Costed later = costed(request.after(), after, request.sizes(), findings, watch);
        if (earlier == null || later == null) {
            return new CompareAnswer.Nothing(after.account(), findings);
        }
        String home = earlier.book().settings().home().getCurrencyCode();
        String otherHome = later.book().settings().home().getCurrencyCode();
        Path file = request.after().book();
        if (!home.equals(otherHome)) {
            findings.add(Finding.error(BookReading.whole(file), DeskMessages.otherHome(home, otherHome)));
            return new CompareAnswer.Nothing(after.account(), findings);
        }
        Variances variances = Variances.between(earlier, later);
        if (variances.runs().isEmpty()) {
            findings.add(Finding.error(BookReading.whole(file), DeskMessages.nothingToCompare()));
            return new CompareAnswer.Nothing(after.account(), findings);
        }
        return new CompareAnswer.Compared(
                later, words(request.before(), earlier), words(request.after(), later), variances, List.of(), findings);
    }

    /**
     * Reads a workbook, plans the runs of its Actuals as they were planned, and holds what they took against that.
     *
     * @throws IOException if a file cannot be read
     */
    public CompareAnswer withActuals(Sources sources, LocalDate today, Watch watch) throws IOException {
        Reading<Book> reading = BookReading.of(sources, today, watch);
        Book book = reading.value();
        if (book.past().actuals().isEmpty() && !reading.findings().stream().anyMatch(Finding::isError)) {
            return new CompareAnswer.NoActuals(reading.account(), reading.findings());
        }
        List<Finding> findings = new ArrayList<>(reading.findings());
        ActualRuns actual = ActualRuns.of(book);
        findings.addAll(actual.findings());
        if (book.gaps().isEverything() || actual.runs().isEmpty()) {
            return nothingPlanned(sources, reading, findings);
        }
        Book plan = actual.plan(book);
        Watched costing = new Watched(watch, Stage.COSTING, plan.runs().size());
        CostOutcome outcome = new CostRuns(Planners.forRuns(), SearchLimits.usual(costing)).cost(plan, costing);
        findings.addAll(outcome.findings());
        if (!(outcome instanceof CostOutcome.Costed costed)) {
            return nothingPlanned(sources, reading, findings);
        }
        ActualVariances held = ActualVariances.of(costed, actual);
        findings.addAll(held.findings());
        if (held.runs().isEmpty()) {
            return nothingPlanned(sources, reading, findings);
        }
        String plannedOn =
                "plan, by prices and rates of " + costed.book().settings().costingDate();
        return new CompareAnswer.Compared(costed, plannedOn, "Actuals", held.variances(), held.runs(), findings);
    }

    private static CompareAnswer nothingPlanned(Sources sources, Reading<Book> reading, List<Finding> findings) {
        if (findings.stream().noneMatch(Finding::isError)) {
            findings.add(Finding.error(BookReading.whole(sources.book()), DeskMessages.noActualToCompare()));
        }
        return new CompareAnswer.Nothing(reading.account(), findings);
    }

    private static String words(Sources sources, CostOutcome.Costed costed) {
        return sources.book().getFileName() + " on " + costed.book().settings().costingDate();
    }

    /** The costs of one side; null if there are none. Messages name the side's file, so both can be told apart. */
    private static CostOutcome.@Nullable Costed costed(
            Sources sources, Reading<Book> reading, RunSizes sizes, List<Finding> findings, Watch watch) {
        List<Finding> found = new ArrayList<>(reading.findings());
        CostOutcome outcome = null;
        if (!reading.value().gaps().isEverything()) {
            Book book = sizes.applyTo(reading.value());
            found.addAll(RunSizes.problems(sources.book(), book));
            if (!RunSizes.isNothing(book)) {
                Watched costing = new Watched(watch, Stage.COSTING, book.runs().size());
                outcome = new CostRuns(Planners.forRuns(), SearchLimits.usual(costing)).cost(book, costing);
                found.addAll(outcome.findings());
            }
        }
        String side = Objects.toString(sources.book().getFileName(), "");
        for (Finding one : found) {
            Finding named = new Finding(one.level(), one.origin(), side + ": " + one.text());
            if (!findings.contains(named)) {
                findings.add(named);
            }
        }
        return outcome instanceof CostOutcome.Costed costed ? costed : null;
    }
}
