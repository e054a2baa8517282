package perkilo.desk;

import java.nio.file.Path;
import java.time.LocalDate;
import javax.money.CurrencyUnit;

/**
 * Which exchange rate to look up.
 *
 * @param table any file that rates can be read from
 * @param from one unit of this currency …
 * @param to … in this one
 * @param day the last rate on or before it holds
 */
public record RateRequest(Path table, CurrencyUnit from, CurrencyUnit to, LocalDate day) {}
