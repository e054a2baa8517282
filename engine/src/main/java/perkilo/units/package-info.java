/**
 * Currencies, exchange rates and measures.
 *
 * <ul>
 *   <li>a currency is a JSR 354 {@link javax.money.CurrencyUnit}; amounts that leave the engine are
 *       {@link javax.money.MonetaryAmount}s, while sums inside are plain decimals, for speed;
 *   <li>two currencies meet only through {@link perkilo.units.ExchangeRates}, at a date;
 *   <li>an invoiced amount is rounded half up to the currency's minor unit, by
 *       {@link perkilo.units.Currencies#invoiced};
 *   <li>litres are converted to kilograms only with a density that a person typed.
 * </ul>
 *
 * <p>Start at {@link perkilo.units.ExchangeRates} and {@link perkilo.units.Measure}. This package uses JSR 354 (Moneta
 * behind it) and JSR 385 (Indriya behind it).
 */
@NullMarked
package perkilo.units;

import org.jspecify.annotations.NullMarked;
