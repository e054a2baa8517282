/** Numbers, dates and headers as people write them. */
@NullMarked
package perkilo.workbook.read.table;

import org.jspecify.annotations.NullMarked;
