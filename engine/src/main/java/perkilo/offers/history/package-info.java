/**
 * The history of suppliers' prices: the changes since the last list, and the previous prices.
 *
 * <ul>
 *   <li>a list is a supplier's quotes in one file; the newest on or before a day is compared with the quotes before it,
 *       both as {@link perkilo.offers.PackHistory} finds them;
 *   <li>prices are compared for the same pack and the same quantity, per unit of the pack, in the supplier's currency.
 * </ul>
 *
 * <p>Start at {@link perkilo.offers.history.PriceChanges}. {@code perkilo.costing.CostEffect} has the effect on the
 * costs of runs. This package uses {@code offers} and the packages under it.
 */
@NullMarked
package perkilo.offers.history;

import org.jspecify.annotations.NullMarked;
