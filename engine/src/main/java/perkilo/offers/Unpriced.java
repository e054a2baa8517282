package perkilo.offers;

import java.time.LocalDate;
import perkilo.origin.Origin;

/**
 * A pack that a supplier's list names without a price: their earlier quotes for it end.
 *
 * @param pack the pack in the row
 * @param quotedOn the list's day
 * @param origin the row
 */
public record Unpriced(PackOffered pack, LocalDate quotedOn, Origin origin) {}
