/**
 * What can be asked of Perkilo, as services: check, cost, order, swap, take in price lists and rates, start a workbook.
 *
 * <p>A service takes a request, a plain record, and gives back a value with everything that was found. Where there are
 * several outcomes, the value is sealed.
 *
 * <ul>
 *   <li>nothing is printed here, and there are no exit codes: the command line, or a page, decides how an answer looks;
 *   <li>the day of today is part of a request;
 *   <li>a file that cannot be read or written is an {@link java.io.IOException} whose message is a sentence for a
 *       person;
 *   <li>long work tells a {@link perkilo.desk.Watch} how far it has come, and stops when the watch asks it to: a search
 *       ends with the best plan so far, anything else with what is done.
 * </ul>
 *
 * <p>Start at {@link perkilo.desk.CostBook}. This package may use everything but the command line. It alone chooses the
 * planners.
 */
@NullMarked
package perkilo.desk;

import org.jspecify.annotations.NullMarked;
