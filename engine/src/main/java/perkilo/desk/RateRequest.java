package perkilo.desk;

import java.nio.file.Path;
import java.time.LocalDate;
import javax.money.CurrencyUnit;

/**
 * A request to look up an exchange rate.
 *
 * @param table any file that rates can be read from
 * @param from the currency of which one unit is converted
 * @param to the currency that it is converted to
 * @param day the last rate on or before this day is used
 */
public record RateRequest(Path table, CurrencyUnit from, CurrencyUnit to, LocalDate day) {}
