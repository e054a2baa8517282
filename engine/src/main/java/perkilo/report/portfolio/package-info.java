/**
 * One workbook over many: what every run of every book costs, side by side.
 *
 * <ul>
 *   <li>what comes from a book is a plain number, with a link to the book's own result, where it is a formula;
 *   <li>what is derived from those numbers is a live formula;
 *   <li>amounts of different home currencies are never added: each currency has its own tables.
 * </ul>
 *
 * <p>Start at {@link perkilo.report.portfolio.PortfolioReport}.
 */
@NullMarked
package perkilo.report.portfolio;

import org.jspecify.annotations.NullMarked;
