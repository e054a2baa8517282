/** What can be ordered at on a day, and what a quote is good for, by hand. */
@NullMarked
package perkilo.offers;

import org.jspecify.annotations.NullMarked;
