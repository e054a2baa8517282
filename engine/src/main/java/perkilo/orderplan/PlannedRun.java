package perkilo.orderplan;

import perkilo.costing.RunNeeds;
import perkilo.model.Book;
import perkilo.model.Demand;
import perkilo.model.Run;

/**
 * The run for a row of the demand.
 *
 * @param demand the row
 * @param period the month of the run
 * @param needs of the run
 */
public record PlannedRun(Demand demand, int period, RunNeeds needs) {

    static PlannedRun of(Book book, Horizon horizon, Demand demand) {
        Run run = new Run.OfProduct(demand.product(), demand.units(), demand.origin());
        return new PlannedRun(demand, horizon.periodOf(demand.neededBy().date()), RunNeeds.of(book, run));
    }
}
