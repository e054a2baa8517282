/** Numbers, dates and headers as people write them. */
@NullMarked
package perkilo.reading.table;

import org.jspecify.annotations.NullMarked;
