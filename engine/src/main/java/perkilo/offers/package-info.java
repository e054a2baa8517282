/**
 * What suppliers offer: an item in a pack, its price breaks, and how long a price holds.
 *
 * <ul>
 *   <li>an {@link perkilo.offers.Offer} is one supplier's quote for one item in one pack; rows of lists are offers with
 *       one price, which {@link perkilo.offers.JoinedOffer} puts together, with what does not fit in them;
 *   <li>quotes of one {@link perkilo.offers.PackOffered} follow each other: {@link perkilo.offers.PackHistory} has the
 *       rules, and what a quote is good for is a {@link perkilo.offers.QuoteLife};
 *   <li>{@link perkilo.offers.OfferHistory} answers which prices can be ordered at on a day, for costs and for orders;
 *   <li>what a supplier's newer list lacks is known to {@link perkilo.offers.KnownLists}.
 * </ul>
 *
 * <p>Nothing here is reported to a person: readers turn what is found into findings with their cells. Start at
 * {@link perkilo.offers.OfferHistory}. This package uses {@code origin}, {@code units} and {@code names}.
 */
@NullMarked
package perkilo.offers;

import org.jspecify.annotations.NullMarked;
