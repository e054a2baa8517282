/**
 * How a table of prices that someone else laid out is read: which columns hold what, and what each row says.
 *
 * <ul>
 *   <li>a list is long (one row a break) or wide (a column a break, or a column a pack);
 *   <li>what it does not say clearly is a {@link perkilo.layouts.Question}, answered in a
 *       {@link perkilo.layouts.Mapping}; nothing is guessed;
 *   <li>each row becomes a {@link perkilo.layouts.ListLine} that knows its cell.
 * </ul>
 *
 * <p>Start at {@link perkilo.layouts.LayoutFinder}, then {@link perkilo.layouts.ListRows}. The words of the languages
 * are in {@code words.csv}. What people read is in {@code RowMessages} and {@code QuestionMessages}.
 */
@NullMarked
package perkilo.layouts;

import org.jspecify.annotations.NullMarked;
