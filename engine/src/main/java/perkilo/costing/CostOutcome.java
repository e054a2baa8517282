package perkilo.costing;

import java.util.List;
import perkilo.model.Book;
import perkilo.origin.Finding;

/** What costing a book came to. */
public sealed interface CostOutcome {

    /** What was found on the way. */
    List<Finding> findings();

    /**
     * Every run is costed.
     *
     * @param book what was costed
     * @param market who sells what on the costing date
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
     * Something that is needed cannot be bought.
     *
     * @param findings what, and why; at least one is an error
     */
    record NoPurchase(List<Finding> findings) implements CostOutcome {

        public NoPurchase {
            findings = List.copyOf(findings);
        }
    }
}
