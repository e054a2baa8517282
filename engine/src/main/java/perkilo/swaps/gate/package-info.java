/**
 * The gates that a material has to pass before it is offered in the place of another, each with its reason in words.
 *
 * <ul>
 *   <li>what is not known never counts as fitting: where function, solubility, a required tag or a natural origin
 *       target can't be shown the gate is shut; elsewhere the swap passes with a caution;
 *   <li>HLB and allergens are shown and keep nothing out.
 * </ul>
 *
 * <p>Start at {@link perkilo.swaps.gate.Gates}. This package uses {@code swaps.trial}, {@code swaps.facts} and the JDK.
 */
@NullMarked
package perkilo.swaps.gate;

import org.jspecify.annotations.NullMarked;
