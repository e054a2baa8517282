/**
 * Sets sheets into a workbook without changing anything else in it.
 *
 * <p>A workbook is a zip of parts. An office suite or a library that reads and rewrites a workbook changes many small
 * things. So the person's parts are never read into a model: they are copied unchanged, and long parts are not even
 * unpacked.
 *
 * <ul>
 *   <li>only the list of sheets, its relationships, the content types and the styles change, by edits of their text;
 *   <li>the sheets come from a workbook written in memory, with their drawings and charts;
 *   <li>a result sheet is recognised by a hidden name in its scope that records the name of its tab, see
 *       {@link perkilo.xlsx.splice.OwnSheets}; a sheet without it, or renamed, belongs to the person and stays;
 *   <li>running again replaces our sheets, so the file does not grow.
 * </ul>
 *
 * <p>Start at {@link perkilo.xlsx.splice.BookSplice}.
 */
@NullMarked
package perkilo.xlsx.splice;

import org.jspecify.annotations.NullMarked;
