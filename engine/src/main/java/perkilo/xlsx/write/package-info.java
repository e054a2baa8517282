/**
 * Writes a report into a person's workbook.
 *
 * <ul>
 *   <li>the result sheets are written as parts of their own by {@code perkilo.xlsx.author}, and then set into the
 *       person's workbook by {@code perkilo.xlsx.splice};
 *   <li>each formula is written together with the engine's value, so that whoever shows the file without recalculating
 *       shows the same figures; charts carry their values too;
 *   <li>words are words, whatever they begin with;
 *   <li>a file is written beside its place and moved there when it is complete, so that nothing is ever lost.
 * </ul>
 *
 * <p>Start at {@link perkilo.xlsx.write.WorkbookWriter}.
 */
@NullMarked
package perkilo.xlsx.write;

import org.jspecify.annotations.NullMarked;
