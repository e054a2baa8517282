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
     * There is a plan for all that can be planned.
     *
     * @param book the planned book
     * @param market the offers
     * @param plan what to order
     * @param unmet what is late or not covered
     * @param findings errors about what is not met, warnings and notes
     */
    record Planned(Book book, Market market, OrderPlan plan, Unmet unmet, List<Finding> findings)
            implements OrderOutcome {

        public Planned {
            findings = List.copyOf(findings);
        }
    }

    /**
     * There is no demand, or nothing was found in the time allowed.
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
