/** What result sheets show after a person has changed the workbook they are in. */
@NullMarked
package perkilo.live;

import org.jspecify.annotations.NullMarked;
