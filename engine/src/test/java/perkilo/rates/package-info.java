/** The table of rates that is kept, against the files as the European Central Bank published them. */
@NullMarked
package perkilo.rates;

import org.jspecify.annotations.NullMarked;
