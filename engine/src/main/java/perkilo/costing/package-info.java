/**
 * The cost of a run of a product: per kilogram, per unit, and in cash.
 *
 * <p>The steps: {@link perkilo.costing.FillTarget} (the content of a unit) → {@link perkilo.costing.Batches} (the bulk
 * that is made) → {@link perkilo.costing.RunNeeds} (the need of each item) → {@link perkilo.costing.Market} (who sells
 * it, at what landed price) → a purchase plan → {@link perkilo.costing.RunCost} (the cost, by
 * {@link perkilo.costing.Head head}) → {@link perkilo.costing.PriceLadder} (the price it must sell for).
 *
 * <ul>
 *   <li>stock on hand is not used: a product's cost does not depend on it;
 *   <li>used, wasted and stock left add up to the outlay; the heads add up to the total, exactly;
 *   <li>the search for the cheapest purchase comes from outside, as {@link perkilo.purchasing.PlanPurchases}.
 * </ul>
 *
 * <p>Start at {@link perkilo.costing.CostRuns}. This package uses the layers above it and the JDK.
 */
@NullMarked
package perkilo.costing;

import org.jspecify.annotations.NullMarked;
