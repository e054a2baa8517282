/**
 * The dated table of exchange rates that a person keeps, and the source of its rates.
 *
 * <ul>
 *   <li>the table is a CSV file with the columns of the Rates sheet, newest day first, each rate with its source;
 *   <li>incoming rates add days; a rate that is already there stays unless it is to be replaced, and a difference is
 *       reported;
 *   <li>only {@link perkilo.rates.Bank} uses the network, and only when it is called.
 * </ul>
 *
 * <p>Start at {@link perkilo.rates.RatesTable}. {@link perkilo.units.ExchangeRates} chooses the rate of a day.
 */
@NullMarked
package perkilo.rates;

import org.jspecify.annotations.NullMarked;
