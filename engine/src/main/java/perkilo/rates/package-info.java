/**
 * The dated table of exchange rates that a person keeps, and where its rates come from.
 *
 * <ul>
 *   <li>the table is a CSV file with the columns of the Rates sheet, newest day first, each rate with its source;
 *   <li>what is taken in adds days; a rate that is there already stays unless it is to be replaced, and where the two
 *       differ that is said;
 *   <li>the network is asked by {@link perkilo.rates.Bank} alone, and only when somebody calls it.
 * </ul>
 *
 * <p>Start at {@link perkilo.rates.RatesTable}. Which rate holds on a day is told by
 * {@link perkilo.units.ExchangeRates}.
 */
@NullMarked
package perkilo.rates;

import org.jspecify.annotations.NullMarked;
