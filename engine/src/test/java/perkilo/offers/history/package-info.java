@NullMarked
package perkilo.offers.history;

import org.jspecify.annotations.NullMarked;
