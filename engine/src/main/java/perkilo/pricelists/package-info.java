/**
 * Suppliers' own price lists, in whatever layout they arrive, brought into the long form that {@code --prices} reads.
 *
 * <ul>
 *   <li>a list is long (one row a break) or wide (a column a break, or a column a pack), in German, French or English;
 *   <li>what a list does not say clearly is a {@link perkilo.pricelists.Question}, answered in the supplier's
 *       {@link perkilo.pricelists.Mapping}, which is kept for his next list; nothing is guessed;
 *   <li>names are matched with those that are known: the same, by INCI name, by CAS number, by synonym; a name that is
 *       only like another is proposed, never taken;
 *   <li>lists are kept by supplier and date in a {@link perkilo.pricelists.ListFolder}.
 * </ul>
 *
 * <p>Start at {@link perkilo.pricelists.TakeIn}. The words of the three languages are in {@code words.csv}.
 */
@NullMarked
package perkilo.pricelists;

import org.jspecify.annotations.NullMarked;
