/**
 * What a person brings: materials, suppliers, offers, formulas, products, runs, demand, stock.
 *
 * <ul>
 *   <li>every number is a {@link perkilo.origin.Figure} and knows the cell it stands in; percentages are fractions;
 *   <li>what a person left blank is null here where it is unknown, and its default where the trade has one;
 *   <li>a name is matched without regard to case and spacing, by {@link perkilo.names.Names#key}.
 * </ul>
 *
 * <p>Start at {@link perkilo.model.Book}: everything hangs off it. This package uses {@code origin}, {@code units} and
 * {@code purchasing.DutyBasis}.
 */
@NullMarked
package perkilo.model;

import org.jspecify.annotations.NullMarked;
