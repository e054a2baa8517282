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
 * What changed prices do to each run of a book.
 *
 * @param runs in the order of the book
 * @param possible whether every run can be bought for at present prices
 * @param findings what was found on the way
 */
public record CostEffect(List<OfRun> runs, boolean possible, List<Finding> findings) {

    public CostEffect {
        runs = List.copyOf(runs);
        findings = List.copyOf(findings);
    }

    /**
     * One run at both prices.
     *
     * @param before null where it could not be bought for at the previous prices
     * @param now at present prices
     */
    public record OfRun(@Nullable RunCost before, RunCost now) {

        /** Cost of one unit at the previous prices; empty for bulk, and where it is not known. */
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
            return new CostEffect(List.of(), false, now.findings());
        }
        CostOutcome before = costing.cost(book.withOffers(PreviousPrices.in(book.offers(), changes)));
        List<Finding> findings = new ArrayList<>(costed.findings());
        List<RunCost> earlier = List.of();
        if (before instanceof CostOutcome.Costed known) {
            earlier = known.runs();
        } else {
            before.findings().stream()
                    .filter(Finding::isError)
                    .map(finding -> Finding.warning(
                            finding.origin(), "at the previous prices nothing could be costed: " + finding.text()))
                    .forEach(findings::add);
        }
        List<OfRun> runs = new ArrayList<>();
        for (int at = 0; at < costed.runs().size(); at++) {
            runs.add(new OfRun(
                    earlier.isEmpty() ? null : earlier.get(at), costed.runs().get(at)));
        }
        return new CostEffect(runs, true, findings);
    }
}
