@NullMarked
package perkilo.orderplan;

import org.jspecify.annotations.NullMarked;
