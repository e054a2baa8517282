/** How results look in a workbook, and whether they conform to the standard. */
@NullMarked
package perkilo.xlsx.author;

import org.jspecify.annotations.NullMarked;
