/**
 * The names of the parts of a workbook's package, shared by the code that reads packages and the code that writes them.
 *
 * <p>Start at {@link perkilo.xlsx.parts.PartNames}. This package uses the JDK alone.
 */
@NullMarked
package perkilo.xlsx.parts;

import org.jspecify.annotations.NullMarked;
