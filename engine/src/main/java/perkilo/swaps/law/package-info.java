/**
 * Limits of the law for what formulas contain, by kind of product and day.
 *
 * <p>The tables beside this package say which substances share a limit, how an amount is expressed, and where each rule
 * is published. Start at {@link perkilo.swaps.law.Law}. This package uses {@code model}, {@code names},
 * {@code swaps.facts} and the JDK.
 */
@NullMarked
package perkilo.swaps.law;

import org.jspecify.annotations.NullMarked;
