@NullMarked
package perkilo.review.prices;

import org.jspecify.annotations.NullMarked;
