/**
 * Tables found in grids, and the values in their cells.
 *
 * <ul>
 *   <li>a table is found by its header row, anywhere on a sheet, by the descriptions in {@code perkilo.schema};
 *   <li>a value that can mean two things is an error that says so, never a guess;
 *   <li>every problem is a finding with its cell; reading does not stop at the first.
 * </ul>
 *
 * <p>Start at {@link perkilo.reading.table.TableFinder} and {@link perkilo.reading.table.TableRow}.
 */
@NullMarked
package perkilo.reading.table;

import org.jspecify.annotations.NullMarked;
