package perkilo.report.cost;

import perkilo.costing.RunCost;
import perkilo.decision.Share;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Table;

/** What one page says of a product, for JSON; apart from {@link Glance}, as the command does not use it. */
public final class GlanceTable {

    /** The sizes, for JSON. */
    private static final Table<RunCost> SIZES = Table.of(
            Column.<RunCost>of("units", "").json(run -> run.needs().units()),
            Column.<RunCost>of("unitCost", "").json(run -> run.unitCost().orElse(null)),
            Column.<RunCost>of("cash", "").json(RunCost::cash),
            Column.<RunCost>of("left", "").json(RunCost::stockLeft),
            Column.<RunCost>of("wholesale", "").json(Glance::wholesale),
            Column.<RunCost>of("retail", "").json(Glance::retail),
            Column.<RunCost>of("margin", "").json(Glance::margin),
            Column.<RunCost>of("profit", "").json(Glance::profit),
            Column.<RunCost>of("breakEven", "").json(Glance::breakEven));

    private static final Table<Share> SHARES = Table.of(
            Column.<Share>of("item", "").json(Share::name),
            Column.<Share>of("perUnit", "").json(Share::ofOne),
            Column.<Share>of("share", "").json(Share::fraction));

    /** For JSON. */
    public static final Table<Glance> JSON = Table.of(
            Column.<Glance>of("product", "").json(Glance::product),
            Column.<Glance>of("sentence", "").json(Glance::sentence),
            Column.<Glance>of("sizes", "").json(page -> SIZES.with(page.sizes())),
            Column.<Glance>of("items", "")
                    .json(page -> SHARES.with(Glance.most(page.sizes().get(0)))));

    private GlanceTable() {}
}
