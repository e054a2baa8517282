package perkilo.report.decision;

import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Head;
import perkilo.costing.ItemCost;
import perkilo.costing.RunCost;
import perkilo.decision.Share;
import perkilo.origin.Origin;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Row;
import perkilo.sheet.table.Table;

/** The shares of the cost of one run. */
public final class ShareTable {

    private final @Nullable RunFigures figures;

    private final Column<Share> item = Column.<Share>of("item", "What it consists of")
            .words(Share::name)
            .look(Look.LABEL)
            .link(share ->
                    share.item() == null ? Origin.NONE : share.item().item().origin())
            .totalWords("Total")
            .json();

    private final Column<Share> ofOne;
    private final Column<Share> fraction;
    private final RunCost cost;

    /** The columns for JSON only, without cells. */
    public ShareTable(RunCost cost) {
        this(cost, null);
    }

    /** The columns on a sheet. */
    ShareTable(RunFigures figures) {
        this(figures.cost(), figures);
    }

    private ShareTable(RunCost cost, @Nullable RunFigures figures) {
        this.cost = cost;
        this.figures = figures;
        boolean filled = cost.needs().units() != null;
        NumberFormat money = NumberFormat.money(cost.home().getCurrencyCode(), 4);
        ofOne = Column.<Share>of(filled ? "perUnit" : "perKg", filled ? "Per unit" : "Per kg")
                .value(Share::ofOne)
                .formula(this::ofOne)
                .format(money)
                .json()
                .sum();
        fraction = Column.<Share>of("percent", "Share")
                .value(Share::fraction)
                .formula(row -> row.entry().fraction() == null
                        ? null
                        : row.ref(ofOne).over(row.table().total(ofOne)))
                .format(NumberFormat.PERCENT)
                .sum()
                .json(share ->
                        share.fraction() == null ? null : share.fraction().movePointRight(2));
    }

    /** The table as the sheet shows it. */
    Table<Share> onSheet() {
        return Table.of(item, ofOne, fraction);
    }

    /** The shares as JSON shows them. */
    public Table.Filled<Share> inJson(List<Share> shares) {
        RunKeys<Share> keys = new RunKeys<>(cost);
        return Table.of(keys.product, keys.formula, keys.units, keys.batchKg, item, ofOne, fraction)
                .with(shares);
    }

    private @Nullable Expr ofOne(Row<Share> row) {
        if (figures == null) {
            return null;
        }
        Share share = row.entry();
        ItemCost ofItem = share.item();
        Expr whole = ofItem == null
                ? Expr.sum(share.part().heads().stream().map(this::head).toList())
                : figures.counted(ofItem);
        return whole.over(figures.measure());
    }

    private Expr head(Head head) {
        return figures == null ? Expr.of(0) : figures.head(head);
    }
}
