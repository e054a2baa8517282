/**
 * A person's data: materials, suppliers, offers, formulas, products, runs, demand, stock.
 *
 * <ul>
 *   <li>every number is a {@link perkilo.origin.Figure} and knows its cell; percentages are fractions;
 *   <li>a blank cell is null here if the value is unknown, and the usual value if the trade has one;
 *   <li>names are compared without regard to case and spacing, by {@link perkilo.names.Names#key}.
 * </ul>
 *
 * <p>Start at {@link perkilo.model.Book}: it holds everything else. This package uses {@code origin}, {@code units} and
 * {@code purchasing.DutyBasis}.
 */
@NullMarked
package perkilo.model;

import org.jspecify.annotations.NullMarked;
