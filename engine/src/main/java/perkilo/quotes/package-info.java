/**
 * The history of suppliers' prices: what rose or fell since the last list, and what that does to the cost of each run.
 *
 * <ul>
 *   <li>a list is what one file holds of a supplier's quotes; the newest on or before a day is compared with what was
 *       quoted before it;
 *   <li>prices are compared for the same pack and the same quantity, per unit of the pack, in the supplier's currency;
 *   <li>a run is costed twice, each time with the best purchase at the prices of its day; everything else stays.
 * </ul>
 *
 * <p>Start at {@link perkilo.quotes.PriceChanges}.
 */
@NullMarked
package perkilo.quotes;

import org.jspecify.annotations.NullMarked;
