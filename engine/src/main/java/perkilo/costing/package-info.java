/**
 * What a run of a product costs: per kilogram, per unit, and in cash.
 *
 * <p>The way of a figure: {@link perkilo.costing.FillTarget} (what goes into a unit) → {@link perkilo.costing.Batches}
 * (how much bulk is made) → {@link perkilo.costing.RunNeeds} (how much of each item) → {@link perkilo.costing.Market}
 * (who sells it, at what landed price) → a purchase plan → {@link perkilo.costing.RunCost} (what it all comes to, by
 * {@link perkilo.costing.Head head}) → {@link perkilo.costing.PriceLadder} (what it must sell for).
 *
 * <ul>
 *   <li>stock on hand plays no part: a product's cost does not depend on what happens to be on the shelf;
 *   <li>used, wasted and stock left add up to the outlay; the heads add up to the total, exactly;
 *   <li>who finds the cheapest purchase is given from outside, as {@link perkilo.purchasing.PlanPurchases}.
 * </ul>
 *
 * <p>Start at {@link perkilo.costing.CostRuns}. This package uses the layers above it and the JDK.
 */
@NullMarked
package perkilo.costing;

import org.jspecify.annotations.NullMarked;
