/**
 * Gets the spreadsheet library ready on a second processor while the first one reads the person's workbook.
 *
 * <p>Loading that library takes longer than reading a small workbook. Whoever uses it waits for
 * {@link perkilo.workbook.ready.SpreadsheetLibrary#await()} first, so that no two threads ever initialise it together.
 */
@NullMarked
package perkilo.workbook.ready;

import org.jspecify.annotations.NullMarked;
