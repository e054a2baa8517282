package perkilo.offers;

import java.time.LocalDate;
import perkilo.origin.Origin;

/**
 * A pack that a supplier's list names without a price: what they quoted for it before holds no longer.
 *
 * @param pack what the row names
 * @param quotedOn the list's day
 * @param origin the row
 */
public record Unpriced(PackOffered pack, LocalDate quotedOn, Origin origin) {}
