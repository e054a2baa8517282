/**
 * How close two materials are in a role, 0 to 100, at worst and at best, and which facts have to be known for it.
 *
 * <p>The facts of a role and their weights are in {@code role-facts.csv}; they are the project's own choice, and every
 * share is shown. A fact that is not known may be anything. Start at {@link perkilo.swaps.closeness.Closeness} and
 * {@link perkilo.swaps.closeness.Undecided}. This package uses {@code names}, {@code origin}, {@code model},
 * {@code swaps.facts}, {@code swaps.role} and the JDK.
 */
@NullMarked
package perkilo.swaps.closeness;

import org.jspecify.annotations.NullMarked;
