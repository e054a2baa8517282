package perkilo.desk;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.jspecify.annotations.Nullable;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.OwnColumn;
import perkilo.origin.Finding;
import perkilo.origin.Reading;
import perkilo.purchasing.SearchLimits;
import perkilo.reading.OwnColumns;
import perkilo.report.swap.SwapReport;
import perkilo.swaps.AppliedSwap;
import perkilo.swaps.FunctionCheck;
import perkilo.swaps.RecipeCheck;
import perkilo.swaps.RoleCheck;
import perkilo.swaps.SwapFinder;
import perkilo.swaps.SwapOptions;
import perkilo.swaps.SwapOutcome;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.lp.OjalgoSolver;
import perkilo.swaps.next.BenchBatch;
import perkilo.swaps.next.NextSteps;

/**
 * Service that finds cheaper materials for the same job, and writes a formula with one of them if that is requested.
 */
public final class FindSwaps {

    /**
     * Reads a book and looks for swaps in its formulas.
     *
     * @throws IOException if a file cannot be read
     */
    public SwapAnswer find(SwapRequest request, Watch watch) throws IOException {
        Reading<Book> reading = BookReading.of(request.sources(), request.today(), watch);
        if (reading.value().gaps().isEverything()) {
            return new SwapAnswer.BadInput(reading.account(), reading.findings());
        }
        Book book = request.sizes().applyTo(reading.value());
        List<Finding> findings = new ArrayList<>(reading.findings());
        List<Finding> subjects = new SwapSubjects(request.sources().book(), book).missing(request.only());
        findings.addAll(subjects);
        findings.addAll(RunSizes.problems(request.sources().book(), book));
        if (!subjects.isEmpty() || RunSizes.isNothing(book)) {
            return new SwapAnswer.BadInput(reading.account(), findings);
        }
        try {
            return answer(book, request, search(book, request, watch), findings);
        } catch (CancellationException stopped) {
            return new SwapAnswer.Stopped(findings);
        }
    }

    private static SwapOutcome search(Book book, SwapRequest request, Watch watch) {
        Watched comparing = new Watched(watch, Stage.COMPARING, 0);
        SwapOptions options = wanted(request).telling((done, all) -> {
            goOn(watch);
            comparing.accept(done, all);
        });
        goOn(watch);
        SwapOutcome outcome = new SwapFinder(Planners.forWhatIfs(), SearchLimits.usual(comparing), new OjalgoSolver())
                .find(book, options);
        goOn(watch);
        return outcome;
    }

    private static void goOn(Watch watch) {
        if (watch.isCancelled()) {
            throw new CancellationException();
        }
    }

    private static SwapOptions wanted(SwapRequest request) {
        @Nullable String function = request.only().function();
        return SwapOptions.usual()
                .only(
                        request.only().formula(),
                        request.only().material(),
                        function == null ? null : Functions.named(function))
                .changing(request.mostChanged())
                .atLeast(request.closeness())
                .withActives(request.actives())
                .withAnyHlb(request.anyHlb());
    }

    private static SwapAnswer answer(Book book, SwapRequest request, SwapOutcome outcome, List<Finding> findings)
            throws IOException {
        findings.addAll(outcome.findings());
        findings.addAll(RecipeCheck.of(book));
        findings.addAll(FunctionCheck.of(book));
        findings.addAll(RoleCheck.of(book));
        if (!(outcome instanceof SwapOutcome.Found found)) {
            return new SwapAnswer.NoPurchase(findings);
        }
        Choice apply = request.apply();
        if (apply == null) {
            NextSteps next = next(found, request);
            return new SwapAnswer.Found(found, next.with(benches(found, request)), Optional.empty(), findings);
        }
        EarlierFormulas earlier = EarlierFormulas.in(request.sources().book());
        Optional<AppliedSwap> applied = apply.applyTo(found, earlier);
        if (applied.isEmpty()) {
            return new SwapAnswer.NoSuchChoice(apply, apply.count(found), findings);
        }
        AppliedSwap swap = applied.get();
        List<OwnColumn> columns = OwnColumns.of(request.sources().book(), swap.original(), SwapReport.writtenColumns());
        findings.addAll(earlier.findings());
        findings.addAll(swap.notes());
        leftBlank(swap, columns).ifPresent(findings::add);
        NextSteps next = next(found, request);
        BigDecimal grams = request.benchGrams();
        List<BenchBatch> benches =
                grams == null ? List.of() : List.of(BenchBatch.of(swap, grams, checked(found, swap.formula())));
        return new SwapAnswer.Found(
                found, next.with(benches), Optional.of(new SwapReport.Applied(swap, columns)), findings);
    }

    private static NextSteps next(SwapOutcome.Found found, SwapRequest request) {
        BigDecimal grams = request.benchGrams();
        return NextSteps.of(
                found,
                Planners.forWhatIfs(),
                SearchLimits.usual(),
                request.only().material(),
                grams == null ? BenchBatch.USUAL_GRAMS : grams);
    }

    /** What a laboratory has to know of a formula, as its sheet goes there alone. */
    private static List<String> checked(SwapOutcome.Found found, Formula formula) {
        return RecipeCheck.of(found.book(), formula).stream()
                .map(Finding::text)
                .distinct()
                .toList();
    }

    /** A batch of each formula as it is. */
    private static List<BenchBatch> benches(SwapOutcome.Found found, SwapRequest request) {
        BigDecimal grams = request.benchGrams();
        return grams == null
                ? List.of()
                : found.base().keySet().stream()
                        .flatMap(name -> found.book().formula(name).stream())
                        .map(formula -> BenchBatch.of(found.book(), formula, grams, checked(found, formula)))
                        .toList();
    }

    /** Columns whose cells are blank where another material came in. */
    private static Optional<Finding> leftBlank(AppliedSwap swap, List<OwnColumn> columns) {
        List<String> blank = columns.stream()
                .filter(column -> column.kind() == OwnColumn.Kind.MATERIAL)
                .map(OwnColumn::heading)
                .toList();
        boolean anyNew = swap.lines().stream().anyMatch(line -> line.from() < 0);
        return blank.isEmpty() || !anyNew
                ? Optional.empty()
                : Optional.of(Finding.note(
                        swap.original().origin(),
                        DeskMessages.leftBlank(swap.formula().name(), blank)));
    }
}
