/**
 * How the parts of a workbook's package are named, for those who read it and those who write into it.
 *
 * <p>Start at {@link perkilo.workbook.parts.PartNames}. This package uses the JDK alone.
 */
@NullMarked
package perkilo.workbook.parts;

import org.jspecify.annotations.NullMarked;
