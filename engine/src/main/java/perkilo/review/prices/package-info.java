/**
 * The review of price lists that arrived: a workbook with what is asked, what was read and what was not read.
 *
 * <p>Start at {@link perkilo.review.prices.PriceReview}.
 */
@NullMarked
package perkilo.review.prices;

import org.jspecify.annotations.NullMarked;
