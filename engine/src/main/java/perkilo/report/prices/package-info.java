/**
 * The sheet about changed prices: what rose or fell since the last lists, and what that does to the cost of each run.
 *
 * <p>Start at {@link perkilo.report.prices.PriceChangesReport}.
 */
@NullMarked
package perkilo.report.prices;

import org.jspecify.annotations.NullMarked;
