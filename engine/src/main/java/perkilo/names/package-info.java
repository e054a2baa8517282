/**
 * When two names mean the same: without regard to case, spaces and marks, and how far a misspelling is from a name.
 *
 * <p>Start at {@link perkilo.names.Names#key}. This package uses the JDK alone.
 */
@NullMarked
package perkilo.names;

import org.jspecify.annotations.NullMarked;
