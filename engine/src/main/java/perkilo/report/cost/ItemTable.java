package perkilo.report.cost;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Item;
import perkilo.costing.ItemCost;
import perkilo.costing.Purchase;
import perkilo.costing.RunCost;
import perkilo.model.Material;
import perkilo.model.Product;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.report.part.MakingPart;
import perkilo.report.part.NeedFormulas;
import perkilo.report.part.Shortage;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.Sign;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Mark;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Row;
import perkilo.sheet.table.Table;

/** The items of a run: used, left and wasted, with their costs. */
public final class ItemTable {

    private final RunCost cost;
    private final @Nullable MakingPart making;
    private final @Nullable PurchasePart purchase;
    private final NumberFormat money;
    private final NumberFormat fine;

    final Column<ItemCost> item = Column.<ItemCost>of("item", "Item")
            .words(one -> one.item().name())
            .look(Look.LABEL)
            .link(one -> one.item().origin())
            .totalWords("Total")
            .json();

    final Column<ItemCost> share = Column.<ItemCost>of("share", "Share of the bulk")
            .value(one -> one.item().isMaterial() ? one.item().share() : null)
            .formula(this::shareOf)
            .format(NumberFormat.PERCENT);

    final Column<ItemCost> needed = Column.<ItemCost>of("needed", "Needed")
            .value(one -> one.item().needed())
            .formula(this::neededOf)
            .format(one -> one.item().isMaterial() ? NumberFormat.QUANTITY : NumberFormat.WHOLE)
            .json();

    final Column<ItemCost> unit =
            Column.<ItemCost>of("unit", "Unit").words(one -> one.item().unit()).json();

    final Column<ItemCost> ordered = Column.<ItemCost>of("ordered", "Bought")
            .value(one -> isPurchased(one) ? one.ordered() : null)
            .formula(this::orderedOf)
            .format(NumberFormat.QUANTITY)
            .json(one -> !one.isKnown() ? null : isBought(one) ? one.ordered() : BigDecimal.ZERO);

    final Column<ItemCost> left = Column.<ItemCost>of("leftover", "Left over")
            .value(one -> isPurchased(one) ? one.leftover() : null)
            .formula(row -> isPurchased(row.entry()) ? row.ref(ordered).minus(row.ref(needed)) : null)
            .format(NumberFormat.QUANTITY)
            .json(one -> one.isKnown() ? one.leftover() : null);

    final Column<ItemCost> usable = Column.<ItemCost>of("usable", "Usable in time")
            .value(one -> isPurchased(one) ? one.usableLeftover() : null)
            .formula(this::usableOf)
            .format(NumberFormat.QUANTITY);

    final Column<ItemCost> perUnit = Column.<ItemCost>of("landedPerUnit", "Landed cost per unit")
            .value(known(ItemCost::landedPerUnit))
            .formula(row -> row.entry().isKnown() ? perUnitOf(row) : null)
            .words(one -> one.isKnown() ? null : Sign.ATTENTION + " no price")
            .wordsLook(Look.ERROR)
            .link(one ->
                    one.housePrice() == null ? Origin.NONE : one.housePrice().origin())
            .json(one -> one.isKnown() ? one.landedPerUnit() : null);

    final Column<ItemCost> used = Column.<ItemCost>of("used", "Used")
            .value(known(ItemCost::used))
            .formula(row -> row.entry().isKnown() ? row.ref(needed).times(row.ref(perUnit)) : null)
            .json();

    final Column<ItemCost> goods = Column.<ItemCost>of("goods", "Goods value only")
            .value(known(ItemCost::usedGoods))
            .formula(row -> row.entry().isKnown() ? goodsOf(row) : null);

    final Column<ItemCost> wasted = Column.<ItemCost>of("wasted", "Wasted")
            .value(known(ItemCost::wasted))
            .formula(row -> row.entry().isKnown() ? wastedOf(row) : null);

    final Column<ItemCost> paid = Column.<ItemCost>of("paid", "Paid")
            .value(known(ItemCost::landed))
            .formula(row -> row.entry().isKnown() ? paidOf(row) : null);

    final Column<ItemCost> stock = Column.<ItemCost>of("stockLeft", "Stock left")
            .value(known(one -> one.landed().subtract(one.used()).subtract(one.wasted())))
            .formula(row -> row.entry().isKnown() ? stockOf(row) : null);

    final Column<ItemCost> shortage = Column.<ItemCost>of("shortage", "")
            .withoutHeading()
            .sentence(this::shortageOf)
            .look(Look.HINT);

    final Column<ItemCost> purchases =
            Column.<ItemCost>of("purchases", "").json(this::purchasesOf).notOnSheet();

    /** The columns for JSON only, without cells. */
    public ItemTable(RunCost cost) {
        this(cost, null, null);
    }

    /**
     * The columns.
     *
     * @param making the cells of what is made
     * @param purchase the cells of what is bought
     */
    ItemTable(RunCost cost, @Nullable MakingPart making, @Nullable PurchasePart purchase) {
        this.cost = cost;
        this.making = making;
        this.purchase = purchase;
        this.money = NumberFormat.money(cost.home().getCurrencyCode(), 2);
        this.fine = NumberFormat.money(cost.home().getCurrencyCode(), 4);
        perUnit.format(fine);
        used.format(money).sum(cost.used());
        goods.format(money).sum();
        wasted.format(money).sum(cost.wasted());
        paid.format(money).sum(cost.outlay());
        stock.format(money).sum(cost.stockLeft());
        left.mark(Mark.belowZero(left, Look.ERROR));
        shortage.mark(Mark.attention(shortage, Look.ERROR));
    }

    /** The table as the sheet shows it. */
    Table<ItemCost> onSheet() {
        return Table.of(
                item, share, needed, unit, ordered, left, usable, perUnit, used, goods, wasted, paid, stock, shortage);
    }

    /** The items as JSON shows them. */
    public Table.Filled<ItemCost> inJson() {
        return Table.of(item, needed, unit, ordered, perUnit, used, left, purchases)
                .with(cost.items());
    }

    private static boolean isBought(ItemCost one) {
        return one.housePrice() == null;
    }

    /** Whether it is bought and can be. */
    private static boolean isPurchased(ItemCost one) {
        return isBought(one) && one.isKnown();
    }

    /** A figure of the items whose cost is known; unknown is not zero. */
    private static Function<ItemCost, @Nullable BigDecimal> known(Function<ItemCost, BigDecimal> figure) {
        return one -> one.isKnown() ? figure.apply(one) : null;
    }

    private Expr stockOf(Row<ItemCost> row) {
        return isBought(row.entry()) ? row.ref(usable).times(row.ref(perUnit)) : Expr.of(0);
    }

    private @Nullable Expr shareOf(Row<ItemCost> row) {
        Item what = row.entry().item();
        return what.isMaterial() ? NeedFormulas.share(cost.needs().formula(), what) : null;
    }

    private Expr neededOf(Row<ItemCost> row) {
        Item what = row.entry().item();
        Material material = what.material();
        return material == null
                ? NeedFormulas.pieces(
                        what, requireNonNull(making().units(), "a component belongs to units of a product"))
                : NeedFormulas.kilograms(material, making().charged(), row.ref(share));
    }

    private @Nullable Expr orderedOf(Row<ItemCost> row) {
        ItemCost one = row.entry();
        return isPurchased(one) ? purchase().sum(one.lines(), purchase()::quantity) : null;
    }

    private @Nullable Expr usableOf(Row<ItemCost> row) {
        if (!isPurchased(row.entry())) {
            return null;
        }
        Material material = row.entry().item().material();
        Product product = cost.needs().product();
        Figure yearly = product == null ? null : product.yearlyUnits();
        Figure life = material == null ? null : material.shelfLifeMonths();
        Expr units = making().units();
        if (yearly == null || life == null || units == null) {
            return row.ref(left);
        }
        Expr inTime = row.ref(needed)
                .times(Expr.input(yearly))
                .over(units)
                .times(Expr.input(life))
                .over(Expr.of(12));
        return row.ref(left).min(inTime.minus(row.ref(needed)).max(Expr.of(0)));
    }

    private Expr perUnitOf(Row<ItemCost> row) {
        ItemCost one = row.entry();
        if (one.housePrice() != null) {
            return Expr.input(one.housePrice());
        }
        return isNoneOrdered(row) ? Expr.of(0) : paidOf(row).over(row.ref(ordered));
    }

    private boolean isNoneOrdered(Row<ItemCost> row) {
        return row.ref(ordered).value().signum() == 0;
    }

    private Expr goodsOf(Row<ItemCost> row) {
        ItemCost one = row.entry();
        if (!isBought(one)) {
            return row.ref(needed).times(row.ref(perUnit));
        }
        Expr all = purchase().sum(one.lines(), purchase()::goods);
        return isNoneOrdered(row) ? Expr.of(0) : row.ref(needed).times(all.over(row.ref(ordered)));
    }

    private Expr wastedOf(Row<ItemCost> row) {
        return isBought(row.entry()) ? row.ref(left).minus(row.ref(usable)).times(row.ref(perUnit)) : Expr.of(0);
    }

    private Expr paidOf(Row<ItemCost> row) {
        ItemCost one = row.entry();
        return isBought(one)
                ? purchase().sum(one.lines(), purchase()::landed)
                : row.ref(needed).times(row.ref(perUnit));
    }

    private List<ResultSheet.Part> shortageOf(Row<ItemCost> row) {
        return isPurchased(row.entry()) ? List.of(Shortage.words(row.ref(left), "", DetailSheet.SHORT)) : List.of();
    }

    private @Nullable Object purchasesOf(ItemCost one) {
        Purchase bought = cost.purchase();
        return PurchasedTable.of(bought).with(one.lines());
    }

    /** The cost of the recipe for one kilogram, from the cells of a placed table. */
    Expr recipe(Placed<ItemCost> placed) {
        List<Expr> parts = new ArrayList<>();
        for (int index = 0; index < placed.rows().size(); index++) {
            ItemCost one = placed.rows().get(index);
            if (one.item().isMaterial() && one.isKnown()) {
                parts.add(placed.ref(index, share).times(placed.ref(index, perUnit)));
            }
        }
        return parts.isEmpty() ? Expr.of(0) : Expr.sum(parts);
    }

    /** Shows that the totals are those of the known part of a run. */
    ItemTable knownSoFar() {
        item.totalWords(IncompleteTable.KNOWN);
        return this;
    }

    private MakingPart making() {
        return requireNonNull(making);
    }

    /** The cells of what is bought. */
    PurchasePart purchase() {
        return requireNonNull(purchase);
    }
}
