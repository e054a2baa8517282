package perkilo.report.decision;

import perkilo.costing.RunCost;
import perkilo.sheet.table.Column;

/**
 * The columns that say in JSON which run a row belongs to.
 *
 * @param <R> what a row is about
 */
final class RunKeys<R> {

    final Column<R> product;
    final Column<R> formula;
    final Column<R> units;
    final Column<R> batchKg;

    /** The columns for rows of one run. */
    RunKeys(RunCost cost) {
        var made = cost.needs().product();
        product = Column.<R>of("product", "").json(row -> made == null ? null : made.name());
        formula = Column.<R>of("formula", "").json(row -> cost.needs().formula().name());
        units = Column.<R>of("units", "").json(row -> cost.needs().units());
        batchKg = Column.<R>of("batchKg", "")
                .json(row -> cost.needs().batches().batchKg())
                .jsonWhere(row -> made == null);
    }
}
