/**
 * What a formulator looks at before a formula is costed: the law, what does not go together, places and levels, what a
 * product needs to hold, and its label.
 *
 * <p>Each check is a class that implements {@link perkilo.swaps.check.FormulaCheck}; {@link perkilo.swaps.check.Checks}
 * lists them. What is not known gives no finding. This package uses {@code swaps.gate}, {@code swaps.law},
 * {@code swaps.trial} and what these use.
 */
@NullMarked
package perkilo.swaps.check;

import org.jspecify.annotations.NullMarked;
