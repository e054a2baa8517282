package perkilo.swaps;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Market;
import perkilo.costing.RunCost;
import perkilo.costing.RunCoster;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Gaps;
import perkilo.names.Names;
import perkilo.offers.Offer;
import perkilo.origin.Finding;
import perkilo.purchasing.PlanPurchases;
import perkilo.purchasing.SearchLimits;
import perkilo.swaps.blend.BlendFinder;
import perkilo.swaps.blend.BlendStudy;
import perkilo.swaps.blend.SolveLinear;
import perkilo.swaps.money.BaseCosts;
import perkilo.swaps.money.LinePrices;
import perkilo.swaps.money.RunsOfFormula;

/**
 * Finds cheaper materials that do the same job.
 *
 * <p>For each line of each formula every other material of the book that can be bought is judged by the
 * {@link perkilo.swaps.gate.Gates gates}, compared by {@link perkilo.swaps.closeness.Closeness closeness}, and costed
 * with a full purchase plan at every run size. A material that saves nothing, or cannot be shown to fit, is listed as
 * not offered, with the reason.
 */
public final class SwapFinder {

    private final PlanPurchases planner;
    private final SearchLimits limits;
    private final SolveLinear solver;

    /**
     * A finder.
     *
     * @param planner finds the purchase of each run; called very often, and from several threads at once, for one
     *     market
     * @param limits for the search, for each run
     * @param solver for joint swaps
     */
    public SwapFinder(PlanPurchases planner, SearchLimits limits, SolveLinear solver) {
        this.planner = planner;
        this.limits = limits;
        this.solver = solver;
    }

    /**
     * Finds swaps.
     *
     * @param book free of errors
     * @param options what to look for
     */
    public SwapOutcome find(Book book, SwapOptions options) {
        Market market = new Market(book.withOffers(ofReadable(book)));
        RunCoster coster = new RunCoster(market, planner, limits);
        LinePrices prices = new LinePrices(market);
        List<Finding> findings = new ArrayList<>();
        boolean anyLeft = false;
        Map<String, RunsOfFormula> runs = new LinkedHashMap<>();
        for (Formula formula : wanted(book, options)) {
            Optional<Gaps.Gap> gap = RecipeCheck.unreadable(book, formula);
            if (gap.isPresent()) {
                String cell = gap.get().origin().where();
                findings.add(Finding.warning(formula.origin(), SwapMessages.notRead(formula.name(), cell)));
                anyLeft = true;
                continue;
            }
            if (RunsOfFormula.of(book, formula).isEmpty()) {
                findings.add(notCosted(formula));
                continue;
            }
            BaseCosts base = BaseCosts.of(book, coster, formula);
            findings.addAll(base.problems());
            for (BaseCosts.LeftOut left : base.left()) {
                String text = SwapMessages.runNotComplete(left.title(), left.missing());
                findings.add(Finding.warning(left.run().origin(), text));
                anyLeft = true;
            }
            if (base.runs() != null) {
                runs.put(formula.name(), base.runs());
            }
        }
        if (runs.isEmpty() && anyLeft) {
            return new SwapOutcome.NoPurchase(findings);
        }
        return search(book, market, prices, runs, findings, options);
    }

    /** The offers for materials whose facts can be read: only they can be judged as candidates. */
    private static List<Offer> ofReadable(Book book) {
        return book.offers().stream()
                .filter(offer -> book.gaps().gaps().isEmpty()
                        || (book.gaps().of(Gaps.Kind.FACT, offer.item()).isEmpty()
                                && book.gaps().of(Gaps.Kind.ITEM, offer.item()).isEmpty()))
                .toList();
    }

    private SwapOutcome search(
            Book book,
            Market market,
            LinePrices prices,
            Map<String, RunsOfFormula> runs,
            List<Finding> findings,
            SwapOptions options) {
        findings.addAll(NoCandidates.notes(book, prices));
        LineSearch search = new LineSearch(book, prices, options);
        LineSearch.Result result = search.find(runs);
        if (result.isOfNothing()) {
            findings.add(Finding.warning(
                    book.formulas().values().iterator().next().origin(), SwapMessages.nothingCompared()));
        }
        List<BlendStudy> blends = new ArrayList<>();
        if (options.blends()) {
            runs.forEach(
                    (name, ofFormula) -> blends.addAll(new BlendFinder(book, prices, ofFormula, solver, bounds(options))
                            .find(name, options.function(), options.material())));
        }
        Map<String, Map<String, RunCost>> base = new LinkedHashMap<>();
        runs.forEach((name, ofFormula) -> base.put(name, ofFormula.base()));
        return new SwapOutcome.Found(
                book,
                market,
                base,
                result.swaps(),
                result.rejected(),
                result.missing(),
                result.kept(),
                blends,
                findings);
    }

    private static BlendFinder.Bounds bounds(SwapOptions options) {
        return new BlendFinder.Bounds(
                options.mostChanged(),
                options.spreadingTolerance(),
                options.hlbBand(),
                options.leastCloseness().divide(BigDecimal.valueOf(2)));
    }

    private static List<Formula> wanted(Book book, SwapOptions options) {
        @Nullable String only = options.formula();
        return only == null
                ? List.copyOf(book.formulas().values())
                : book.formula(only).stream().toList();
    }

    private static Finding notCosted(Formula formula) {
        return Finding.warning(formula.origin(), SwapMessages.noRun(formula.name()));
    }

    /** Whether a name is the requested one; true for every name if none is requested. */
    static boolean matches(@Nullable String asked, String name) {
        return asked == null || Names.key(asked).equals(Names.key(name));
    }
}
