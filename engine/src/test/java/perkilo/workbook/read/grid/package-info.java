/** Files of every kind, and what is said of those that cannot be read. */
@NullMarked
package perkilo.workbook.read.grid;

import org.jspecify.annotations.NullMarked;
