/**
 * The gates that a material has to pass before it is offered as a replacement, each with its reason in words.
 *
 * <ul>
 *   <li>unknown values never count as fitting: if function, solubility, a required tag or a natural origin target
 *       cannot be shown, the gate is closed; elsewhere the swap passes with a caution;
 *   <li>HLB and allergens are shown and keep nothing out.
 * </ul>
 *
 * <p>Start at {@link perkilo.swaps.gate.Gates}; the sentences are in {@code GateMessages}. This package uses
 * {@code swaps.trial}, {@code swaps.facts} and the JDK.
 */
@NullMarked
package perkilo.swaps.gate;

import org.jspecify.annotations.NullMarked;
