/** Tests with files of every kind, and of the messages for files that cannot be read. */
@NullMarked
package perkilo.xlsx.grid;

import org.jspecify.annotations.NullMarked;
