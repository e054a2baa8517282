package perkilo.orderplan;

import perkilo.costing.RunNeeds;
import perkilo.model.Book;
import perkilo.model.Demand;
import perkilo.model.Run;

/**
 * A row of the demand as the run that makes it.
 *
 * @param demand what is wanted by when
 * @param period the month it is made in
 * @param needs what the run makes and needs
 */
public record PlannedRun(Demand demand, int period, RunNeeds needs) {

    static PlannedRun of(Book book, Horizon horizon, Demand demand) {
        Run run = new Run.OfProduct(demand.product(), demand.units(), demand.origin());
        return new PlannedRun(demand, horizon.periodOf(demand.neededBy().date()), RunNeeds.of(book, run));
    }
}
