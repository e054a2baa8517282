/**
 * The services of Perkilo: check, cost, order, swap, take in price lists and rates, start a workbook.
 *
 * <p>A service takes a request, a plain record, and returns a value with everything that was found. If there are
 * several outcomes, the value is sealed.
 *
 * <ul>
 *   <li>nothing is printed here, and there are no exit codes: the command line, or a page, decides how an answer looks;
 *   <li>the day of today is part of a request;
 *   <li>a file that cannot be read or written is an {@link java.io.IOException} whose message is a sentence for a
 *       person;
 *   <li>long work reports its progress to a {@link perkilo.desk.Watch}, and stops when the watch asks it to: a search
 *       ends with the best plan so far, other work with what is done.
 * </ul>
 *
 * <p>Start at {@link perkilo.desk.CostBook}. This package may use everything but the command line. Only this package
 * chooses planners.
 */
@NullMarked
package perkilo.desk;

import org.jspecify.annotations.NullMarked;
