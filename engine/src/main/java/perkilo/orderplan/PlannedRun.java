package perkilo.orderplan;

import perkilo.costing.RunNeeds;
import perkilo.model.Demand;

/**
 * The run for a row of the demand.
 *
 * @param demand the row
 * @param period the month of the run
 * @param needs of the run
 */
public record PlannedRun(Demand demand, int period, RunNeeds needs) {}
