package perkilo.reading;

import java.time.LocalDate;
import perkilo.offers.PackOffered;
import perkilo.origin.Origin;

/**
 * A pack that a supplier's list names without a price: what he quoted for it before holds no longer.
 *
 * @param pack what the row names
 * @param quotedOn the list's day
 * @param origin the row
 */
record Unpriced(PackOffered pack, LocalDate quotedOn, Origin origin) {}
