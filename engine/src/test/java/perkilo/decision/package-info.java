@NullMarked
package perkilo.decision;

import org.jspecify.annotations.NullMarked;
