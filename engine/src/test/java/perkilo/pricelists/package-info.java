@NullMarked
package perkilo.pricelists;

import org.jspecify.annotations.NullMarked;
