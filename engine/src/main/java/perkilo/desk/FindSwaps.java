package perkilo.desk;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.jspecify.annotations.Nullable;
import perkilo.model.Book;
import perkilo.origin.Finding;
import perkilo.origin.Reading;
import perkilo.purchasing.SearchLimits;
import perkilo.swaps.AppliedSwap;
import perkilo.swaps.FunctionCheck;
import perkilo.swaps.RecipeCheck;
import perkilo.swaps.RoleCheck;
import perkilo.swaps.SwapFinder;
import perkilo.swaps.SwapOptions;
import perkilo.swaps.SwapOutcome;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.lp.OjalgoSolver;

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
            return answer(book, request.apply(), search(book, request, watch), findings);
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
                .withActives(request.actives());
    }

    private static SwapAnswer answer(Book book, @Nullable Choice apply, SwapOutcome outcome, List<Finding> findings) {
        findings.addAll(outcome.findings());
        findings.addAll(RecipeCheck.of(book));
        findings.addAll(FunctionCheck.of(book));
        findings.addAll(RoleCheck.of(book));
        if (!(outcome instanceof SwapOutcome.Found found)) {
            return new SwapAnswer.NoPurchase(findings);
        }
        if (apply == null) {
            return new SwapAnswer.Found(found, Optional.empty(), findings);
        }
        Optional<AppliedSwap> applied = apply.applyTo(found);
        if (applied.isEmpty()) {
            return new SwapAnswer.NoSuchChoice(apply, apply.count(found), findings);
        }
        findings.addAll(applied.get().notes());
        return new SwapAnswer.Found(found, Optional.of(applied.get().formula()), findings);
    }
}
