/**
 * What a changed formula costs at every run size, each from a full purchase plan of its own.
 *
 * <p>The runs as they are get costed once; {@link perkilo.swaps.money.Prospects} leaves out what cannot pay before a
 * plan is sought. Start at {@link perkilo.swaps.money.RunsOfFormula}. This package uses {@code costing},
 * {@code purchasing}, {@code swaps.trial} and the JDK; who plans purchases is given from outside.
 */
@NullMarked
package perkilo.swaps.money;

import org.jspecify.annotations.NullMarked;
