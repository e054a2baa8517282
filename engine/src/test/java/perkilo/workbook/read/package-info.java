/** How workbooks and price lists are read: what is understood, what is refused, and in which words. */
@NullMarked
package perkilo.workbook.read;

import org.jspecify.annotations.NullMarked;
