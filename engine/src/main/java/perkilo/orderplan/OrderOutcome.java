package perkilo.orderplan;

import java.util.List;
import perkilo.costing.Market;
import perkilo.model.Book;
import perkilo.origin.Finding;

/** What planning the orders of a book came to. */
public sealed interface OrderOutcome {

    /** What was found on the way. */
    List<Finding> findings();

    /**
     * Everything that is wanted can be made in its month.
     *
     * @param book what was planned for
     * @param market who sells what on the costing date
     * @param plan what to order
     * @param findings warnings and notes
     */
    record Planned(Book book, Market market, OrderPlan plan, List<Finding> findings) implements OrderOutcome {

        public Planned {
            findings = List.copyOf(findings);
        }
    }

    /**
     * Something cannot be bought, or not in time, or there is nothing to plan for.
     *
     * @param findings what, and why; at least one is an error
     * @param badInput whether the book itself is wrong, rather than that no plan exists
     */
    record NoPlan(List<Finding> findings, boolean badInput) implements OrderOutcome {

        public NoPlan {
            findings = List.copyOf(findings);
        }
    }
}
