/**
 * The costs of a changed formula at every run size, each from its own full purchase plan.
 *
 * <p>The present runs are costed once. Start at {@link perkilo.swaps.money.RunsOfFormula}. This package uses
 * {@code costing}, {@code purchasing}, {@code swaps.trial} and the JDK; the planner of purchases comes from outside.
 */
@NullMarked
package perkilo.swaps.money;

import org.jspecify.annotations.NullMarked;
