package perkilo.report.cost;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import perkilo.costing.PriceLadder;
import perkilo.costing.RunCost;
import perkilo.costing.UnitDecimals;
import perkilo.model.Product;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.report.part.Inputs;
import perkilo.report.part.RunTitle;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Mark;
import perkilo.sheet.table.Row;
import perkilo.sheet.table.Table;

/** From the unit cost to the retail price, and from a target retail price to the margin that is left. */
final class LadderTable {

    private static final int DECIMALS = 2;

    private final IdentityHashMap<RunCost, RunCells> cells = new IdentityHashMap<>();
    private final boolean distributed;

    final Column<RunCost> run = Column.<RunCost>of("run", "Run")
            .sentence(row -> RunTitle.of(row.entry().needs(), cells(row).making(), ""))
            .look(Look.LABEL)
            .link(cost -> product(cost).origin())
            .width(30);

    final Column<RunCost> units = Column.<RunCost>of("units", "Units")
            .formula(row -> cells(row).making().units())
            .format(NumberFormat.WHOLE)
            .width(10);

    final Column<RunCost> unitCost = Column.<RunCost>of("unitCost", "Unit cost")
            .formula(row -> cells(row).unitCost())
            .look(Look.KEY)
            .width(14);

    final Column<RunCost> targetMargin = Column.<RunCost>of("targetMargin", "Target margin")
            .formula(row -> up(row.entry()) == null ? null : Expr.input(targetMargin(row.entry())))
            .format(NumberFormat.PERCENT)
            .link(cost -> up(cost) == null ? Origin.NONE : targetMargin(cost).origin())
            .width(11);

    final Column<RunCost> wholesale = Column.<RunCost>of("wholesale", "Wholesale price")
            .value(cost -> from(up(cost), PriceLadder.Upwards::wholesale))
            .formula(row -> ifUp(row, row.ref(unitCost).over(Expr.of(1).minus(row.ref(targetMargin)))))
            .width(14);

    final Column<RunCost> distributorMargin = Column.<RunCost>of("distributorMargin", "Distributor margin")
            .value(cost -> product(cost).distributorMargin().value())
            .formula(row -> Expr.input(product(row.entry()).distributorMargin()))
            .format(NumberFormat.PERCENT)
            .link(cost -> product(cost).distributorMargin().origin())
            .width(11);

    final Column<RunCost> distributorPrice = Column.<RunCost>of("distributorPrice", "Distributor's price")
            .value(cost -> from(up(cost), PriceLadder.Upwards::distributorPrice))
            .formula(row -> ifUp(row, row.ref(wholesale).over(Expr.of(1).minus(row.ref(distributorMargin)))))
            .width(14);

    final Column<RunCost> retailerMargin = Column.<RunCost>of("retailerMargin", "Retailer margin")
            .value(cost -> product(cost).retailerMargin().value())
            .formula(row -> Expr.input(product(row.entry()).retailerMargin()))
            .format(NumberFormat.PERCENT)
            .link(cost -> product(cost).retailerMargin().origin())
            .width(11);

    final Column<RunCost> retailExVat = Column.<RunCost>of("retailExVat", "Retail without VAT")
            .value(cost -> from(up(cost), PriceLadder.Upwards::retailExVat))
            .formula(row -> ifUp(row, row.ref(toRetailer()).over(Expr.of(1).minus(row.ref(retailerMargin)))))
            .width(15);

    final Column<RunCost> vat = Column.<RunCost>of("vat", "VAT")
            .value(cost -> product(cost).vat().value())
            .formula(row -> Expr.input(product(row.entry()).vat()))
            .format(NumberFormat.PERCENT)
            .link(cost -> product(cost).vat().origin())
            .width(9);

    final Column<RunCost> retail = Column.<RunCost>of("retail", "Retail price")
            .value(cost -> from(up(cost), PriceLadder.Upwards::retail))
            .formula(row -> ifUp(row, row.ref(retailExVat).times(Expr.of(1).plus(row.ref(vat)))))
            .look(Look.KEY)
            .width(14);

    final Column<RunCost> targetRetail = Column.<RunCost>of("targetRetail", "Target retail price")
            .formula(row -> down(row.entry()) == null ? null : Expr.input(targetRetail(row.entry())))
            .link(cost -> down(cost) == null ? Origin.NONE : targetRetail(cost).origin())
            .width(16);

    final Column<RunCost> targetExVat = Column.<RunCost>of("targetRetailExVat", "Target without VAT")
            .value(cost -> from(down(cost), PriceLadder.Downwards::retailExVat))
            .formula(row -> ifDown(row, row.ref(targetRetail).over(Expr.of(1).plus(row.ref(vat)))))
            .width(15);

    final Column<RunCost> targetDistributorPrice = Column.<RunCost>of(
                    "targetDistributorPrice", "Distributor's price at target")
            .value(cost -> from(down(cost), PriceLadder.Downwards::distributorPrice))
            .formula(row -> ifDown(row, atTarget(row)))
            .width(15);

    final Column<RunCost> targetWholesale = Column.<RunCost>of("targetWholesale", "Wholesale at target")
            .value(cost -> from(down(cost), PriceLadder.Downwards::wholesale))
            .formula(row -> ifDown(row, wholesaleAtTarget(row)))
            .width(15);

    final Column<RunCost> margin = Column.<RunCost>of("margin", "Margin left")
            .value(cost -> from(down(cost), PriceLadder.Downwards::margin))
            .formula(this::marginOf)
            .format(NumberFormat.PERCENT)
            .look(Look.KEY)
            .width(11);

    final Column<RunCost> breakEven = Column.<RunCost>of("breakEvenUnits", "Break-even units")
            .value(cost -> ladder(cost).breakEvenUnits())
            .formula(row -> breakEvenOf(row, ladder(row.entry()).sale(), named(row)))
            .words(cost -> never(ladder(cost).sale()))
            .wordsLook(Look.WARNING)
            .format(NumberFormat.WHOLE)
            .look(Look.KEY)
            .width(13);

    final Column<RunCost> profitPerUnit = Column.<RunCost>of("profitPerUnit", "Profit per unit")
            .value(cost -> ladder(cost).sale().profitPerUnit())
            .formula(row -> named(row).minus(row.ref(unitCost)))
            .width(13);

    final Column<RunCost> profitPerRun = Column.<RunCost>of("profitPerRun", "Profit per run")
            .value(LadderTable::profitPerRunOf)
            .formula(row -> row.ref(profitPerUnit).times(row.ref(units)))
            .width(14);

    final Column<RunCost> ladderBreakEven = Column.<RunCost>of(
                    "ladderBreakEvenUnits", "Break-even at the target margin")
            .value(cost -> from(ladder(cost).ladderSale(), PriceLadder.Sale::breakEvenUnits))
            .formula(row -> breakEvenOf(row, ladder(row.entry()).ladderSale(), row.ref(wholesale)))
            .words(cost -> never(ladder(cost).ladderSale()))
            .wordsLook(Look.WARNING)
            .format(NumberFormat.WHOLE)
            .width(14);

    /**
     * The columns.
     *
     * @param home code of the home currency
     * @param runs the cells of each run on the detail sheet
     */
    LadderTable(String home, List<RunCells> runs) {
        NumberFormat money = NumberFormat.money(home, DECIMALS);
        for (RunCells run : runs) {
            cells.put(run.cost(), run);
        }
        this.distributed = runs.stream()
                .map(run -> run.cost().needs().product())
                .filter(Objects::nonNull)
                .anyMatch(product -> !Inputs.isNone(product.distributorMargin()));
        int unitDecimals = UnitDecimals.of(runs.stream().map(RunCells::cost).toList(), DECIMALS);
        unitCost.format(NumberFormat.money(home, unitDecimals));
        for (Column<RunCost> one : List.of(
                wholesale,
                distributorPrice,
                retailExVat,
                retail,
                targetRetail,
                targetExVat,
                targetDistributorPrice,
                targetWholesale)) {
            one.format(money);
        }
        for (Column<RunCost> one : List.of(margin, profitPerUnit, profitPerRun)) {
            one.mark(Mark.where(ResultSheet.Condition.BELOW_ZERO, Look.ERROR));
        }
        profitPerUnit.format(NumberFormat.money(home, unitDecimals));
        profitPerRun.format(money);
    }

    /** The table as the sheet shows it. */
    Table<RunCost> onSheet() {
        return new Table<>(Stream.of(
                        run,
                        units,
                        unitCost,
                        targetMargin,
                        wholesale,
                        distributorMargin,
                        distributorPrice,
                        retailerMargin,
                        retailExVat,
                        vat,
                        retail,
                        targetRetail,
                        targetExVat,
                        targetDistributorPrice,
                        targetWholesale,
                        margin,
                        breakEven,
                        profitPerUnit,
                        profitPerRun,
                        ladderBreakEven)
                .filter(column -> distributed || !ofDistributor().contains(column))
                .toList());
    }

    /** A run's ladder as JSON shows it; null if it has none. */
    static @Nullable Object inJson(RunCost cost) {
        PriceLadder ladder = cost.ladder();
        Product product = cost.needs().product();
        if (ladder == null || product == null) {
            return null;
        }
        LadderTable table = new LadderTable("", List.of());
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        for (Column<RunCost> one : List.of(table.wholesale, table.retailExVat, table.retail)) {
            json.put(one.key(), one.valueOf(cost));
        }
        Figure target = product.targetMargin();
        json.put(
                table.margin.key(),
                ladder.downwards() == null && target != null ? target.value() : table.margin.valueOf(cost));
        for (Column<RunCost> one : List.of(table.breakEven, table.profitPerUnit, table.profitPerRun)) {
            json.put(one.key(), one.valueOf(cost));
        }
        if (ladder.ladderSale() != null) {
            json.put(table.ladderBreakEven.key(), table.ladderBreakEven.valueOf(cost));
        }
        if (!product.distributorMargin().isZero()) {
            json.put(table.distributorPrice.key(), table.distributorPrice.valueOf(cost));
        }
        if (ladder.downwards() != null) {
            json.put(table.targetExVat.key(), table.targetExVat.valueOf(cost));
            json.put(table.targetWholesale.key(), table.targetWholesale.valueOf(cost));
            if (!product.distributorMargin().isZero()) {
                json.put(table.targetDistributorPrice.key(), table.targetDistributorPrice.valueOf(cost));
            }
        }
        json.put("shopPrice", shopPrice(product, ladder));
        for (Column<RunCost> one : List.of(table.retailerMargin, table.distributorMargin, table.vat)) {
            json.put(one.key(), one.valueOf(cost));
        }
        return json;
    }

    /** The price that the person named, else the one that follows from the target margin. */
    private static @Nullable BigDecimal shopPrice(Product product, PriceLadder ladder) {
        Figure named = product.targetRetailPrice();
        PriceLadder.Upwards up = ladder.upwards();
        return named != null ? named.value() : up == null ? null : up.retail();
    }

    private @Nullable Expr marginOf(Row<RunCost> row) {
        PriceLadder.Downwards down = down(row.entry());
        return down == null || down.margin() == null
                ? null
                : row.ref(targetWholesale).minus(row.ref(unitCost)).over(row.ref(targetWholesale));
    }

    private List<Column<RunCost>> ofDistributor() {
        return List.of(distributorMargin, distributorPrice, targetDistributorPrice);
    }

    /** Whether a distributor is between brand and retailer, or could be typed in. */
    boolean hasDistributor() {
        return distributed;
    }

    /** What the retailer pays. */
    private Column<RunCost> toRetailer() {
        return distributed ? distributorPrice : wholesale;
    }

    /** What the retailer pays at the target retail price. */
    private Expr atTarget(Row<RunCost> row) {
        return row.ref(targetExVat).times(Expr.of(1).minus(row.ref(retailerMargin)));
    }

    private Expr wholesaleAtTarget(Row<RunCost> row) {
        return distributed
                ? row.ref(targetDistributorPrice).times(Expr.of(1).minus(row.ref(distributorMargin)))
                : atTarget(row);
    }

    /** The wholesale price at the price that the person named. */
    private Expr named(Row<RunCost> row) {
        return row.ref(down(row.entry()) == null ? wholesale : targetWholesale);
    }

    private @Nullable Expr breakEvenOf(Row<RunCost> row, PriceLadder.@Nullable Sale sale, Expr price) {
        if (sale == null || sale.breakEvenUnits() == null) {
            return null;
        }
        Expr earned = price.minus(
                row.ref(unitCost).minus(requireNonNull(cells(row).unit()).oneOffs()));
        return Inputs.orZero(product(row.entry()).oneOffCosts()).over(earned);
    }

    private static @Nullable String never(PriceLadder.@Nullable Sale sale) {
        return sale != null && sale.breakEvenUnits() == null ? "never" : null;
    }

    private static BigDecimal profitPerRunOf(RunCost cost) {
        return ladder(cost)
                .sale()
                .profitPerUnit()
                .multiply(requireNonNull(cost.needs().units()));
    }

    private static <T> @Nullable BigDecimal from(@Nullable T part, Function<T, @Nullable BigDecimal> which) {
        return part == null ? null : which.apply(part);
    }

    private static @Nullable Expr ifUp(Row<RunCost> row, Expr figure) {
        return up(row.entry()) == null ? null : figure;
    }

    private static @Nullable Expr ifDown(Row<RunCost> row, Expr figure) {
        return down(row.entry()) == null ? null : figure;
    }

    private RunCells cells(Row<RunCost> row) {
        return requireNonNull(cells.get(row.entry()));
    }

    private static Product product(RunCost cost) {
        return requireNonNull(cost.needs().product());
    }

    private static PriceLadder ladder(RunCost cost) {
        return requireNonNull(cost.ladder());
    }

    private static PriceLadder.@Nullable Upwards up(RunCost cost) {
        return ladder(cost).upwards();
    }

    private static PriceLadder.@Nullable Downwards down(RunCost cost) {
        return ladder(cost).downwards();
    }

    private static Figure targetMargin(RunCost cost) {
        return requireNonNull(product(cost).targetMargin());
    }

    private static Figure targetRetail(RunCost cost) {
        return requireNonNull(product(cost).targetRetailPrice());
    }
}
