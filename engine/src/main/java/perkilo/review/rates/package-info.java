/**
 * The review of exchange rates that arrived: a workbook with what their files leave open.
 *
 * <p>Start at {@link perkilo.review.rates.RatesReview}.
 */
@NullMarked
package perkilo.review.rates;

import org.jspecify.annotations.NullMarked;
