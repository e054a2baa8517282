/**
 * Result tables that are declared once and shown in several ways.
 *
 * <ul>
 *   <li>a {@link perkilo.sheet.table.Column} is an object: its key, heading, width, number format, the engine's value,
 *       the live formula, the marks, and how JSON and the terminal show it;
 *   <li>a {@link perkilo.sheet.table.Table} is a list of columns; their order on the sheet is the order of the list;
 *   <li>a {@link perkilo.sheet.table.Placed} table has rows and a place on a sheet. Formulas refer to columns and rows,
 *       never to numbers or letters.
 * </ul>
 *
 * <p>Start at {@link perkilo.sheet.table.Column}. This package knows neither costing nor file formats.
 */
@NullMarked
package perkilo.sheet.table;

import org.jspecify.annotations.NullMarked;
