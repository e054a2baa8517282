/** Files of every kind, and what is said of those that cannot be read. */
@NullMarked
package perkilo.xlsx.grid;

import org.jspecify.annotations.NullMarked;
