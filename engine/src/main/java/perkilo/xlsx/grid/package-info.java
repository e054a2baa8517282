/**
 * Files as grids of cells, in any of the formats XLSX, CSV and JSON.
 *
 * <ul>
 *   <li>the kind of a file is recognised by its content, never by its name;
 *   <li>a number is the shortest decimal that is read as the double in the file, so that 0.1 is 0.1;
 *   <li>a value that cannot be trusted (an error value, a damaged reference, a number too large) becomes an error cell
 *       with the reason in words, never an empty one;
 *   <li>a file that cannot be read at all throws an {@link perkilo.xlsx.grid.UnreadableFileException}, whose message
 *       says what the file is and what to do. Messages are in {@code FileMessages}, the reasons of error cells in
 *       {@code CellFaults}.
 * </ul>
 *
 * <p>Start at {@link perkilo.xlsx.grid.Grids} and {@link perkilo.xlsx.grid.Grid}; a workbook goes through
 * {@link perkilo.xlsx.grid.WorkbookFile}, sheet by sheet, in one pass over each part. Only this package knows Apache
 * POI and Jackson on the reading side.
 */
@NullMarked
package perkilo.xlsx.grid;

import org.jspecify.annotations.NullMarked;
