package perkilo.costing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import perkilo.model.Book;
import perkilo.offers.history.PreviousPrices;
import perkilo.offers.history.PriceChanges;
import perkilo.origin.Finding;

/**
 * The effect of changed prices on each run of a book.
 *
 * @param runs those that are complete at present prices, in the order of the book
 * @param incomplete the other runs, each with what it lacks at present prices
 * @param possible whether anything is known of a run at present prices
 * @param findings what was found while costing
 */
public record CostEffect(List<OfRun> runs, List<RunAnswer> incomplete, boolean possible, List<Finding> findings) {

    public CostEffect {
        runs = List.copyOf(runs);
        incomplete = List.copyOf(incomplete);
        findings = List.copyOf(findings);
    }

    /**
     * One run at both prices.
     *
     * @param before null if something it needs could not be bought at the previous prices
     * @param now at present prices
     */
    public record OfRun(@Nullable RunCost before, RunCost now) {

        /** Cost of one unit at the previous prices; empty for bulk, and if it is unknown. */
        public Optional<BigDecimal> unitCostBefore() {
            return Optional.ofNullable(before).flatMap(RunCost::unitCost);
        }
    }

    /**
     * Costs a book at previous and present prices.
     *
     * @param book free of errors, with the runs to cost
     */
    public static CostEffect of(Book book, PriceChanges changes, CostRuns costing) {
        CostOutcome now = costing.cost(book);
        if (!(now instanceof CostOutcome.Costed costed)) {
            return new CostEffect(List.of(), List.of(), false, now.findings());
        }
        CostOutcome before = costing.cost(book.withOffers(PreviousPrices.in(book.offers(), book.prices(), changes)));
        List<Finding> findings = new ArrayList<>(costed.findings());
        before.findings().stream()
                .filter(Finding::isError)
                .filter(finding -> !costed.findings().contains(finding))
                .map(finding -> Finding.warning(finding.origin(), CostMessages.previousCostUnknown(finding.text())))
                .forEach(findings::add);
        List<RunAnswer> earlier = before instanceof CostOutcome.Costed known ? known.answers() : List.of();
        List<OfRun> runs = new ArrayList<>();
        List<RunAnswer> incomplete = new ArrayList<>();
        for (int at = 0; at < costed.answers().size(); at++) {
            RunAnswer present = costed.answers().get(at);
            RunAnswer past = at < earlier.size() && earlier.get(at).isComplete() ? earlier.get(at) : null;
            RunCost cost = present.cost();
            if (present.isComplete() && cost != null) {
                runs.add(new OfRun(past == null ? null : past.cost(), cost));
            } else {
                incomplete.add(present);
            }
        }
        return new CostEffect(runs, incomplete, true, findings);
    }
}
