/**
 * Suppliers' own price lists, in whatever layout they arrive, taken in as the long form that {@code --prices} reads.
 *
 * <ul>
 *   <li>what a list does not say clearly is asked on a review; answers are remembered for the supplier's next list;
 *   <li>nothing of a list is kept before its questions are answered;
 *   <li>names are matched with known names: the same name, by INCI name, by CAS number, by synonym; a name that only
 *       resembles a known one is asked about;
 *   <li>lists are kept by supplier and date in a {@link perkilo.pricelists.ListFolder}.
 * </ul>
 *
 * <p>Start at {@link perkilo.pricelists.TakeIn}; how a list is laid out is the work of {@code perkilo.layouts}. What
 * people read is in {@code ListMessages}.
 */
@NullMarked
package perkilo.pricelists;

import org.jspecify.annotations.NullMarked;
