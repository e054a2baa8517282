package perkilo.orderplan;

import java.util.List;
import perkilo.costing.Market;
import perkilo.model.Book;
import perkilo.origin.Finding;

/** The result of planning the orders of a book. */
public sealed interface OrderOutcome {

    /** Everything found while planning. */
    List<Finding> findings();

    /**
     * All demand can be made in its month.
     *
     * @param book the planned book
     * @param market the offers
     * @param plan what to order
     * @param findings warnings and notes
     */
    record Planned(Book book, Market market, OrderPlan plan, List<Finding> findings) implements OrderOutcome {

        public Planned {
            findings = List.copyOf(findings);
        }
    }

    /**
     * Something cannot be bought at all or in time, or there is no demand.
     *
     * @param findings the problems; at least one is an error
     * @param badInput whether the book itself is wrong; if false, no plan exists
     */
    record NoPlan(List<Finding> findings, boolean badInput) implements OrderOutcome {

        public NoPlan {
            findings = List.copyOf(findings);
        }
    }
}
