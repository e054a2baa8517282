/** How workbooks and price lists are read: what is understood, what is refused, and in which words. */
@NullMarked
package perkilo.reading;

import org.jspecify.annotations.NullMarked;
