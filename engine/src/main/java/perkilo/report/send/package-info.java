/**
 * Orders as they go to suppliers: purchase orders on paper, and the days of ordering and delivery for a calendar.
 *
 * <ul>
 *   <li>A purchase order says nothing internal: no home currency, no cost, no leftover, no reason, no other supplier.
 *   <li>What is not known is left blank, and {@link perkilo.report.send.SendMessages} says which cells to fill.
 *   <li>{@link perkilo.report.send.OrderToSend} alone looks into a plan.
 * </ul>
 *
 * <p>Start at {@link perkilo.report.send.PurchaseOrders}.
 */
@NullMarked
package perkilo.report.send;

import org.jspecify.annotations.NullMarked;
