/**
 * The places of figures, and the findings about them.
 *
 * <ul>
 *   <li>every figure that a person typed is a {@link perkilo.origin.Figure}: its value and its cell;
 *   <li>a reader never stops at the first bad cell: it returns a {@link perkilo.origin.Reading}, the value together
 *       with all {@link perkilo.origin.Finding findings};
 *   <li>an unknown value is absent, never zero;
 *   <li>decimals become text only through {@link perkilo.origin.Decimals}, independent of the machine's language.
 * </ul>
 *
 * <p>Start at {@link perkilo.origin.Figure}. This package uses the JDK alone.
 */
@NullMarked
package perkilo.origin;

import org.jspecify.annotations.NullMarked;
