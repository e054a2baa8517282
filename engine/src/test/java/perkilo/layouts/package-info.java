@NullMarked
package perkilo.layouts;

import org.jspecify.annotations.NullMarked;
