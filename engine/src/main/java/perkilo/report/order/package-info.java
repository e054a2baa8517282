/**
 * The sheets that {@code perkilo order} writes: Order plan, Supplier orders, Stock and leftovers, Why these orders,
 * Runs planned and Messages.
 *
 * <p>The way of a figure: Runs planned computes what each run needs from the person's own cells; Supplier orders
 * computes from the chosen packs what each order costs; Stock and leftovers uses the lots up, month by month; Order
 * plan refers to all three. Only the packs are plain values, and what Why these orders says: it compares with plans
 * that were not chosen, which no spreadsheet can follow.
 *
 * <p>Each key figure is compared with the engine's own on the way ({@link perkilo.sheet.SheetBuilder#checked}).
 *
 * <p>JSON and the terminal show the same tables: {@link perkilo.report.order.OrdersTable},
 * {@link perkilo.report.order.StockTable}, {@link perkilo.report.order.PlanFacts} and
 * {@link perkilo.report.order.WhyTables}.
 *
 * <p>Start at {@link perkilo.report.order.OrderReport}.
 */
@NullMarked
package perkilo.report.order;

import org.jspecify.annotations.NullMarked;
