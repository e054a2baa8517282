@NullMarked
package perkilo.corpus;

import org.jspecify.annotations.NullMarked;
