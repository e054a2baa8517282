/**
 * How the parts of a workbook's package are named, for those who read it and those who write into it.
 *
 * <p>Start at {@link perkilo.xlsx.parts.PartNames}. This package uses the JDK alone.
 */
@NullMarked
package perkilo.xlsx.parts;

import org.jspecify.annotations.NullMarked;
