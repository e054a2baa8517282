/** How results look in a workbook, and that saving them harms nothing. */
@NullMarked
package perkilo.xlsx.write;

import org.jspecify.annotations.NullMarked;
