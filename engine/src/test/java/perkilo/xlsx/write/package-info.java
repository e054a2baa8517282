/** Tests that saving results changes nothing else in a workbook. */
@NullMarked
package perkilo.xlsx.write;

import org.jspecify.annotations.NullMarked;
