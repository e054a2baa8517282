/**
 * Comparison of names: whether two names mean the same apart from case, spaces and marks, and how close a misspelling
 * is to a name.
 *
 * <p>Start at {@link perkilo.names.Names#key}. This package uses the JDK alone.
 */
@NullMarked
package perkilo.names;

import org.jspecify.annotations.NullMarked;
