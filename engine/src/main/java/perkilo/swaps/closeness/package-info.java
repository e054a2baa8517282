/**
 * How close two materials are, 0 to 100, by the traits that matter for the work of the one that is replaced.
 *
 * <p>The weights stand in {@code weights.csv}; they are the project's own choice, and every share is shown. What is not
 * known adds nothing. Start at {@link perkilo.swaps.closeness.Closeness}. This package uses {@code model},
 * {@code swaps.facts} and the JDK.
 */
@NullMarked
package perkilo.swaps.closeness;

import org.jspecify.annotations.NullMarked;
