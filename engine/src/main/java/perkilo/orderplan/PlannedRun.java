package perkilo.orderplan;

import java.time.LocalDate;
import perkilo.costing.RunNeeds;
import perkilo.model.Demand;

/**
 * The run for a row of the demand.
 *
 * @param demand the row
 * @param goodsNeeded the day on which its materials and components are needed: the days that making takes before the
 *     units are
 * @param needs of the run
 */
public record PlannedRun(Demand demand, LocalDate goodsNeeded, RunNeeds needs) {}
