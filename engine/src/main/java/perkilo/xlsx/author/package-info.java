/**
 * A report as the parts of a workbook's package: sheets, styles, drawings and charts, in the open standard's XML
 * (ECMA-376, Office Open XML).
 *
 * <p>The parts are written with the JDK alone, because loading a spreadsheet library takes longer than writing a small
 * workbook. A test checks each part against the published schema of the standard.
 *
 * <ul>
 *   <li>{@link perkilo.xlsx.author.ResultPackage} puts the parts together;
 *   <li>{@link perkilo.xlsx.author.SheetPart} writes a sheet, {@link perkilo.xlsx.author.SheetCells} its cells,
 *       {@link perkilo.xlsx.author.ChartPart} a chart;
 *   <li>{@link perkilo.xlsx.author.NumberFit} makes room for numbers, {@link perkilo.xlsx.author.TextFit} for words,
 *       and {@link perkilo.xlsx.author.HeadFit} between the heads of columns;
 *   <li>{@link perkilo.xlsx.author.StyleSheet} numbers the looks of cells.
 * </ul>
 *
 * <p>Start at {@link perkilo.xlsx.author.ResultPackage}.
 */
@NullMarked
package perkilo.xlsx.author;

import org.jspecify.annotations.NullMarked;
