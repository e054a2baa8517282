/**
 * Suppliers' offers: an item in a pack, its price breaks, and the days on which a price is valid.
 *
 * <ul>
 *   <li>an {@link perkilo.offers.Offer} is one supplier's quote for one item in one pack; rows of lists are offers with
 *       one price, which {@link perkilo.offers.JoinedOffer} joins, with their contradictions;
 *   <li>quotes of one {@link perkilo.offers.PackOffered} replace each other: {@link perkilo.offers.PackHistory} has the
 *       rules, and the state of a quote is a {@link perkilo.offers.QuoteLife};
 *   <li>{@link perkilo.offers.OfferHistory} knows the prices that are valid for orders on a day;
 *   <li>{@link perkilo.offers.KnownLists} finds what a supplier's newer list lacks.
 * </ul>
 *
 * <p>Nothing here makes findings: readers do, with the cells. Start at {@link perkilo.offers.OfferHistory}. This
 * package uses {@code origin}, {@code units} and {@code names}.
 */
@NullMarked
package perkilo.offers;

import org.jspecify.annotations.NullMarked;
