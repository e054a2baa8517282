/**
 * The history of suppliers' prices: what rose or fell since the last list, and what was paid before.
 *
 * <ul>
 *   <li>a list is what one file holds of a supplier's quotes; the newest on or before a day is compared with what was
 *       quoted before it, both as {@link perkilo.offers.PackHistory} finds them;
 *   <li>prices are compared for the same pack and the same quantity, per unit of the pack, in the supplier's currency.
 * </ul>
 *
 * <p>Start at {@link perkilo.offers.history.PriceChanges}. What changed prices do to the cost of runs is
 * {@code perkilo.costing.CostEffect}. This package uses {@code offers} and the packages under it.
 */
@NullMarked
package perkilo.offers.history;

import org.jspecify.annotations.NullMarked;
