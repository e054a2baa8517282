/**
 * Files as grids of cells, whatever their format: XLSX, CSV, JSON.
 *
 * <ul>
 *   <li>what a file is, is told by its content, never by its name;
 *   <li>a number is the shortest decimal that stands for the double in the file, so that 0.1 is 0.1;
 *   <li>what cannot be trusted (an error value, a damaged reference, a number too large) is an error cell with the
 *       reason in words, never an empty one;
 *   <li>a file that cannot be opened at all is an {@link perkilo.xlsx.grid.UnreadableFileException}, whose message
 *       tells a person what the file is and what to do.
 * </ul>
 *
 * <p>Start at {@link perkilo.xlsx.grid.Grids} and {@link perkilo.xlsx.grid.Grid}; a workbook goes through
 * {@link perkilo.xlsx.grid.WorkbookFile}, sheet by sheet, in one pass over each part. Only this package knows Apache
 * POI and Jackson on the reading side.
 */
@NullMarked
package perkilo.xlsx.grid;

import org.jspecify.annotations.NullMarked;
