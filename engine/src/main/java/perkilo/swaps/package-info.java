/**
 * Cheaper materials that do the same job.
 *
 * <p>The steps of a swap: the line has a {@link perkilo.swaps.role.Role role} → {@link perkilo.swaps.trial.Dosing} puts
 * another material into a line → the {@link perkilo.swaps.gate.Gates gates} say whether it fits, each in words →
 * {@link perkilo.swaps.closeness.Closeness} says how close it is → {@link perkilo.swaps.money.RunsOfFormula} costs the
 * changed formula at every run size → a {@link perkilo.swaps.Swap}, with what changes on the label and what to check.
 * {@code swaps.blend} does the same for all materials of one kind at once.
 *
 * <ul>
 *   <li>unknown values never count as equal;
 *   <li>every figure of money comes from a full purchase plan, with and without the swap;
 *   <li>the same book gives the same list, on any number of threads.
 * </ul>
 *
 * <p>Start at {@link perkilo.swaps.SwapFinder}. This package uses {@code costing} and what lies above it, and the JDK;
 * it knows no planner and no solver.
 */
@NullMarked
package perkilo.swaps;

import org.jspecify.annotations.NullMarked;
