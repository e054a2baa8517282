/**
 * A report as the parts of a workbook's package: sheets, styles, drawings and charts, in the open standard's XML
 * (ECMA-376, Office Open XML).
 *
 * <p>The parts are written by the JDK's own XML writer and nothing else, so that a small workbook is done before a
 * library for spreadsheets would be loaded. Whether they conform to the standard is a test's business: it holds each
 * part against the published schema.
 *
 * <ul>
 *   <li>{@link perkilo.xlsx.author.ResultPackage} puts the parts together;
 *   <li>{@link perkilo.xlsx.author.SheetPart} writes a sheet, {@link perkilo.xlsx.author.SheetCells} its cells,
 *       {@link perkilo.xlsx.author.ChartPart} a chart;
 *   <li>{@link perkilo.xlsx.author.NumberFit} sees to it that no number is cut off, and
 *       {@link perkilo.xlsx.author.HeadFit} that heads stand apart, {@link perkilo.xlsx.author.TextFit} that no words
 *       are;
 *   <li>{@link perkilo.xlsx.author.StyleSheet} numbers what cells look like.
 * </ul>
 *
 * <p>Start at {@link perkilo.xlsx.author.ResultPackage}.
 */
@NullMarked
package perkilo.xlsx.author;

import org.jspecify.annotations.NullMarked;
