/**
 * Sets sheets into a workbook without touching anything else of it.
 *
 * <p>A workbook is a zip of parts. What an office suite or a library reads and writes again comes back altered in many
 * small ways, so the person's parts are never read into a model: they are copied as they are, and where one is long
 * without even being unpacked.
 *
 * <ul>
 *   <li>only the list of sheets, its relationships, the content types and the styles change, by edits of their text;
 *   <li>the sheets come from a workbook written in memory, with their drawings and charts;
 *   <li>a sheet of ours is known by a hidden name in its scope that records what its tab is called, see
 *       {@link perkilo.xlsx.splice.OwnSheets}; a sheet without it, or renamed, is the person's and stays;
 *   <li>running again replaces our sheets and lets nothing grow.
 * </ul>
 *
 * <p>Start at {@link perkilo.xlsx.splice.BookSplice}.
 */
@NullMarked
package perkilo.xlsx.splice;

import org.jspecify.annotations.NullMarked;
