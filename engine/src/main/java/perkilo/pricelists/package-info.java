/**
 * Suppliers' own price lists, in whatever layout they arrive, brought into the long form that {@code --prices} reads.
 *
 * <ul>
 *   <li>a list is long (one row a break) or wide (a column a break, or a column a pack), in German, French or English;
 *   <li>what a list does not say clearly is a {@link perkilo.pricelists.Question}, answered in the supplier's
 *       {@link perkilo.pricelists.Mapping}, which is kept for their next list; nothing is guessed;
 *   <li>names are matched with known names: the same name, by INCI name, by CAS number, by synonym; a name that only
 *       resembles a known one is proposed, never used without a person's answer;
 *   <li>lists are kept by supplier and date in a {@link perkilo.pricelists.ListFolder}.
 * </ul>
 *
 * <p>Start at {@link perkilo.pricelists.TakeIn}. The words of the three languages are in {@code words.csv}. What people
 * read is in {@code ListMessages}, {@code RowMessages} and {@code QuestionMessages}.
 */
@NullMarked
package perkilo.pricelists;

import org.jspecify.annotations.NullMarked;
