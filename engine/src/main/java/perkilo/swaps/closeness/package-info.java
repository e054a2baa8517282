/**
 * How close two materials are, 0 to 100, by the traits that matter for the function of the replaced one.
 *
 * <p>The weights are in {@code weights.csv}; they are the project's own choice, and every share is shown. Unknown
 * values add nothing. Start at {@link perkilo.swaps.closeness.Closeness}. This package uses {@code model},
 * {@code swaps.facts} and the JDK.
 */
@NullMarked
package perkilo.swaps.closeness;

import org.jspecify.annotations.NullMarked;
