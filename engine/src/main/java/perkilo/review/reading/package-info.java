/**
 * The sheet Reading of a person's workbook, on which they say how their sheets and columns are read.
 *
 * <p>Start at {@link perkilo.review.reading.ReadingReview}. What the sheet says is applied by
 * {@code perkilo.reading.arrange}.
 */
@NullMarked
package perkilo.review.reading;

import org.jspecify.annotations.NullMarked;
