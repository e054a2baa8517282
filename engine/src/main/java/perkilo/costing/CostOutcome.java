package perkilo.costing;

import java.util.List;
import perkilo.model.Book;
import perkilo.origin.Finding;

/** The result of costing a book. */
public sealed interface CostOutcome {

    /** Everything found while costing. */
    List<Finding> findings();

    /**
     * Every run is costed.
     *
     * @param book the costed book
     * @param market the offers of the costing date
     * @param runs in the order of the book
     * @param findings warnings and notes
     */
    record Costed(Book book, Market market, List<RunCost> runs, List<Finding> findings) implements CostOutcome {

        public Costed {
            runs = List.copyOf(runs);
            findings = List.copyOf(findings);
        }
    }

    /**
     * Something needed cannot be bought.
     *
     * @param findings what cannot be bought, and why; at least one is an error
     */
    record NoPurchase(List<Finding> findings) implements CostOutcome {

        public NoPurchase {
            findings = List.copyOf(findings);
        }
    }
}
