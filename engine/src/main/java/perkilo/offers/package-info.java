/**
 * What suppliers offer: an item in a pack, its price breaks, and how long a price holds.
 *
 * <ul>
 *   <li>an {@link perkilo.offers.Offer} is one supplier's quote for one item in one pack, valid for a stretch of days;
 *   <li>quotes of one {@link perkilo.offers.PackOffered} follow each other: a newer one supersedes an older one;
 *   <li>prices announced for a later day hold for orders placed from that day on ({@link perkilo.offers.Announced}).
 * </ul>
 *
 * <p>Start at {@link perkilo.offers.Offer}. This package uses {@code origin}, {@code units} and {@code names}.
 */
@NullMarked
package perkilo.offers;

import org.jspecify.annotations.NullMarked;
