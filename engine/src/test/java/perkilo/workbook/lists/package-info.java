@NullMarked
package perkilo.workbook.lists;

import org.jspecify.annotations.NullMarked;
