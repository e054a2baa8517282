package perkilo.report.cost;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.money.CurrencyUnit;
import perkilo.costing.Head;
import perkilo.costing.ItemCost;
import perkilo.costing.Listing;
import perkilo.costing.RunCost;
import perkilo.decision.Moving;
import perkilo.origin.Origin;
import perkilo.purchasing.LineCost;
import perkilo.report.decision.RunFigures;
import perkilo.report.part.RunTitle;
import perkilo.sheet.Expr;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.table.Placed;
import perkilo.units.Currencies;

/** The cells of a run's block, for the sheets to decide by. */
final class DecisionCells implements RunFigures {

    private final RunCells cells;
    private final Moving moving;

    DecisionCells(RunCells cells, Moving moving) {
        this.cells = cells;
        this.moving = moving;
    }

    @Override
    public RunCost cost() {
        return cells.cost();
    }

    @Override
    public List<ResultSheet.Part> title() {
        return RunTitle.of(cost().needs(), cells.making(), "");
    }

    @Override
    public Origin origin() {
        return cells.title();
    }

    @Override
    public Expr ofOne() {
        Expr unit = cells.unitCost();
        return unit == null ? cells.bulk().made() : unit;
    }

    @Override
    public Expr measure() {
        Expr units = cells.making().units();
        return units == null ? cells.making().output() : units;
    }

    @Override
    public Expr counted(ItemCost item) {
        ItemsPart items = cells.items();
        return items.table().ref(item, items.columns().used).plus(items.table().ref(item, items.columns().wasted));
    }

    @Override
    public Expr head(Head head) {
        return Objects.requireNonNull(cells.heads().get(head));
    }

    @Override
    public Expr withPrice(ItemCost item) {
        if (item.housePrice() != null) {
            return counted(item);
        }
        PurchasePart purchase = cells.items().columns().purchase();
        List<Expr> parts = item.lines().stream().map(purchase::priced).toList();
        return parts.isEmpty() ? Expr.of(0) : share(item, Expr.sum(parts));
    }

    @Override
    public Expr withCurrency(ItemCost item, String code) {
        CurrencyUnit currency = Currencies.of(code);
        PurchasePart bought = cells.items().columns().purchase();
        List<Expr> parts = new ArrayList<>();
        for (LineCost line : item.lines()) {
            Listing listing = cost().purchase().listing(line);
            boolean price = moving.movesPrice(listing, currency);
            boolean charges = moving.movesCharges(listing, currency);
            if (price && charges) {
                parts.add(bought.landed(line));
            } else if (price) {
                parts.add(bought.priced(line));
            } else if (charges) {
                parts.add(bought.landed(line).minus(bought.priced(line)));
            }
        }
        return parts.isEmpty() ? Expr.of(0) : share(item, Expr.sum(parts));
    }

    /** The part of an amount for all that is bought which the run uses or lets expire. */
    private Expr share(ItemCost item, Expr ofAll) {
        ItemTable columns = cells.items().columns();
        Placed<ItemCost> table = cells.items().table();
        Expr counted = table.ref(item, columns.needed)
                .plus(table.ref(item, columns.left).minus(table.ref(item, columns.usable)));
        return ofAll.times(counted).over(table.ref(item, columns.ordered));
    }
}
