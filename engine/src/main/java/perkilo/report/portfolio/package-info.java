/**
 * A workbook about many: the cost of every run of every book, side by side.
 *
 * <ul>
 *   <li>figures from a book are plain numbers, with a link to the book's own result, which has the formulas;
 *   <li>figures derived from those are live formulas;
 *   <li>amounts of different home currencies are never added: each currency has its own tables.
 * </ul>
 *
 * <p>Start at {@link perkilo.report.portfolio.PortfolioReport}.
 */
@NullMarked
package perkilo.report.portfolio;

import org.jspecify.annotations.NullMarked;
