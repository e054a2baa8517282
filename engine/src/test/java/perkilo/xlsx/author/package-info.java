/** Tests of how results look in a workbook, and that they conform to the standard. */
@NullMarked
package perkilo.xlsx.author;

import org.jspecify.annotations.NullMarked;
