/**
 * The sheets that {@code perkilo cost} writes: Cost summary, Cost detail, Price ladder and Messages.
 *
 * <p>The detail sheet computes everything, one block for each run, from the person's own cells and the chosen packs;
 * the other sheets refer to it. Each key figure is compared with the engine's own
 * ({@link perkilo.sheet.SheetBuilder#checked}).
 *
 * <p>Start at {@link perkilo.report.cost.CostReport}.
 */
@NullMarked
package perkilo.report.cost;

import org.jspecify.annotations.NullMarked;
