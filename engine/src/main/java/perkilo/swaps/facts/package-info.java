/**
 * Published figures and rules of the trade for judging swaps, each with its source in the table beside it.
 *
 * <p>Limits that are stated as acid, allergen thresholds, natural origin content, HLB arithmetic, polarity, and which
 * function of a material is its work. The project's own choices are marked as such in the source column.
 *
 * <p>Start at {@link perkilo.swaps.facts.Functions}. This package uses {@code model}, {@code origin} and the JDK.
 */
@NullMarked
package perkilo.swaps.facts;

import org.jspecify.annotations.NullMarked;
