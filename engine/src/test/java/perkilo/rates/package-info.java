/** Tests of the table of rates against files as the European Central Bank published them. */
@NullMarked
package perkilo.rates;

import org.jspecify.annotations.NullMarked;
