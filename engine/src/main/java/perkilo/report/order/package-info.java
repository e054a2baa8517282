/**
 * The sheets that {@code perkilo order} writes: Order plan, Orders to send, Supplier orders, Stock and leftovers, Why
 * these orders, Runs planned and Messages.
 *
 * <p>How figures are computed: Runs planned computes the need of each run from the person's own cells; Supplier orders
 * computes the cost of each order from the chosen packs; Stock and leftovers uses the lots up, month by month; Order
 * plan refers to all three. Only the packs and the sheet Why these orders are plain values: that sheet compares with
 * plans that were not chosen, which a spreadsheet cannot recompute.
 *
 * <p>Each key figure is compared with the engine's own while the sheet is written
 * ({@link perkilo.sheet.SheetBuilder#checked}).
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
