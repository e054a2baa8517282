/**
 * Writes a report into a person's workbook.
 *
 * <ul>
 *   <li>the result sheets are written as parts of their own by {@code perkilo.xlsx.author}, and then set into the
 *       person's workbook by {@code perkilo.xlsx.splice};
 *   <li>each formula is written together with the engine's value, so that a program that does not recalculate shows the
 *       same figures; charts carry their values too;
 *   <li>words are never read as formulas, even if they begin with an equals sign;
 *   <li>a file is written beside its target and moved there when it is complete, so that nothing is ever lost;
 * </ul>
 *
 * <p>Start at {@link perkilo.xlsx.write.WorkbookWriter}.
 */
@NullMarked
package perkilo.xlsx.write;

import org.jspecify.annotations.NullMarked;
