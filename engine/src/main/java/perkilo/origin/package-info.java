/**
 * Where a figure comes from, and what was found wrong with it.
 *
 * <ul>
 *   <li>every figure that a person typed is a {@link perkilo.origin.Figure}: its value, and the cell it stands in;
 *   <li>a reader never stops at the first bad cell: it returns a {@link perkilo.origin.Reading}, the value together
 *       with all {@link perkilo.origin.Finding findings};
 *   <li>what is unknown is absent, never zero;
 *   <li>decimals become text in one way, by {@link perkilo.origin.Decimals}, whatever the machine's language.
 * </ul>
 *
 * <p>Start at {@link perkilo.origin.Figure}. This package uses the JDK alone.
 */
@NullMarked
package perkilo.origin;

import org.jspecify.annotations.NullMarked;
