package perkilo.offers;

import java.time.LocalDate;

/**
 * An item on a supplier's list, of which nothing else is known.
 *
 * @param supplier by {@link perkilo.names.Names#key}
 * @param item by {@link perkilo.names.Names#key}
 * @param file the name of the list
 * @param quotedOn the day of the quote
 */
public record Listed(String supplier, String item, String file, LocalDate quotedOn) {}
