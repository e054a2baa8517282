@NullMarked
package perkilo.quotes;

import org.jspecify.annotations.NullMarked;
