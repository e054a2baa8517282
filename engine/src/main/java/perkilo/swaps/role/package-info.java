/**
 * What materials are put into formulas for: finer than the functions of the EU glossary.
 *
 * <p>The words are in {@code roles.csv}, what decides whether two materials can play a role in {@code role-facts.csv};
 * both are choices of the project, each row with its source. Start at {@link perkilo.swaps.role.Roles}. This package
 * uses {@code names}, {@code model}, {@code swaps.facts} and the JDK; it knows no formula.
 */
@NullMarked
package perkilo.swaps.role;

import org.jspecify.annotations.NullMarked;
