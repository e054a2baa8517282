/**
 * A report as the parts of a workbook's package: sheets, styles, drawings and charts, in the open standard's XML
 * (ECMA-376, Office Open XML).
 *
 * <p>The parts are written by the JDK's own XML writer and nothing else, so that a small workbook is done before a
 * library for spreadsheets would be loaded. Whether they conform to the standard is a test's business: it holds each
 * part against the published schema.
 *
 * <ul>
 *   <li>{@link perkilo.workbook.author.ResultPackage} puts the parts together;
 *   <li>{@link perkilo.workbook.author.SheetPart} writes a sheet, {@link perkilo.workbook.author.SheetCells} its cells,
 *       {@link perkilo.workbook.author.ChartPart} a chart;
 *   <li>{@link perkilo.workbook.author.NumberFit} sees to it that no number is cut off, and
 *       {@link perkilo.workbook.author.HeadFit} that heads stand apart, {@link perkilo.workbook.author.TextFit} that no
 *       words are;
 *   <li>{@link perkilo.workbook.author.StyleSheet} numbers what cells look like.
 * </ul>
 *
 * <p>Start at {@link perkilo.workbook.author.ResultPackage}.
 */
@NullMarked
package perkilo.workbook.author;

import org.jspecify.annotations.NullMarked;
