/**
 * The reading side: workbooks and price lists into a {@link perkilo.model.Book}, with everything that is wrong in them.
 *
 * <ul>
 *   <li>nothing stops at the first bad cell: all findings are collected, each with its place;
 *   <li>one class reads one kind of table, and one class makes one kind of check across tables;
 *   <li>a value that is not known stays unknown; only what the sheet descriptions call a default is filled in.
 * </ul>
 *
 * <p>Start at {@link perkilo.reading.BookReader}. Below it: {@code grid} turns files into cells, {@code table} finds
 * tables and reads their values.
 */
@NullMarked
package perkilo.reading;

import org.jspecify.annotations.NullMarked;
