/**
 * The sheet about changed prices since the last lists, and their effect on the cost of each run.
 *
 * <p>Start at {@link perkilo.report.prices.PriceChangesReport}.
 */
@NullMarked
package perkilo.report.prices;

import org.jspecify.annotations.NullMarked;
