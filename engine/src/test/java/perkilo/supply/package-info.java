@NullMarked
package perkilo.supply;

import org.jspecify.annotations.NullMarked;
