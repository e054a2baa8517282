/**
 * The reading side: workbooks and price lists into a {@link perkilo.model.Book}, with everything that is wrong in them.
 *
 * <ul>
 *   <li>nothing stops at the first bad cell: all findings are collected, each with its place;
 *   <li>one class reads one kind of table, and one class makes one kind of check across tables;
 *   <li>a value that is not known stays unknown; only defaults of the sheet descriptions are filled in.
 * </ul>
 *
 * <p>Start at {@link perkilo.reading.BookReader}. Below it, {@code table} finds tables and reads their values;
 * {@code perkilo.xlsx.grid} turns files into cells.
 */
@NullMarked
package perkilo.reading;

import org.jspecify.annotations.NullMarked;
