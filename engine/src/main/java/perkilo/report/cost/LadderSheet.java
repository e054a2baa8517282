package perkilo.report.cost;

import java.util.List;
import java.util.Objects;
import perkilo.costing.PriceLadder;
import perkilo.costing.UnitDecimals;
import perkilo.model.Product;
import perkilo.origin.Figure;
import perkilo.report.part.Inputs;
import perkilo.report.part.RunTitle;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;

/** Price ladder: from what a unit costs to its price in the shop, and from a price in the shop to the margin. */
final class LadderSheet {

    private static final int HEADS = 3;
    private static final int DECIMALS = 2;

    private final SheetBuilder sheet = new SheetBuilder("Price ladder");
    private final NumberFormat money;
    private final NumberFormat unitMoney;

    private LadderSheet(String home, List<RunCells> runs) {
        this.money = NumberFormat.money(home, DECIMALS);
        int unitDecimals = UnitDecimals.of(runs.stream().map(RunCells::cost).toList(), DECIMALS);
        this.unitMoney = NumberFormat.money(home, unitDecimals);
    }

    static ResultSheet of(String home, List<RunCells> runs) {
        return new LadderSheet(home, runs).write(home, runs);
    }

    private ResultSheet write(String home, List<RunCells> runs) {
        sheet.widths(30, 10, 14, 11, 14, 11, 15, 9, 14, 16, 15, 15, 11, 13)
                .freeze(HEADS + 1, 1)
                .landscape();
        sheet.text(0, 0, "Price ladder", Look.TITLE);
        sheet.text(
                1,
                0,
                "Upwards: wholesale = unit cost ÷ (1 − margin), retail without VAT = wholesale ÷ (1 − retailer margin). Downwards:"
                        + " from the target retail price to the margin that is left. All in " + home + ".",
                Look.HINT);
        heads();
        int row = HEADS + 1;
        for (RunCells run : runs) {
            if (run.unitCost() != null && run.cost().ladder() != null) {
                writeRun(row++, run);
            }
        }
        if (row == HEADS + 1) {
            sheet.text(row, 0, "No product has a target margin or a target retail price.", Look.HINT);
        } else {
            sheet.highlight(HEADS + 1, 12, row - 1, 12, ResultSheet.Condition.BELOW_ZERO, Look.ERROR);
        }
        return sheet.build();
    }

    private void heads() {
        String[] heads = {
            "Run",
            "Units",
            "Unit cost",
            "Target margin",
            "Wholesale price",
            "Retailer margin",
            "Retail without VAT",
            "VAT",
            "Retail price",
            "Target retail price",
            "Target without VAT",
            "Wholesale at target",
            "Margin left",
            "Break-even units"
        };
        for (int column = 0; column < heads.length; column++) {
            sheet.text(HEADS, column, heads[column], Look.HEADER);
        }
    }

    private void writeRun(int row, RunCells run) {
        Product product = Objects.requireNonNull(run.cost().needs().product());
        PriceLadder ladder = Objects.requireNonNull(run.cost().ladder());
        sheet.sentence(
                row, 0, Look.LABEL, product.origin(), RunTitle.of(run.cost().needs(), run.making(), ""));
        sheet.value(row, 1, Objects.requireNonNull(run.making().units()), NumberFormat.WHOLE, Look.PLAIN);
        Expr cost = sheet.value(row, 2, Objects.requireNonNull(run.unitCost()), unitMoney, Look.KEY);
        Expr retailer = sheet.value(
                row,
                5,
                Expr.input(product.retailerMargin()),
                NumberFormat.PERCENT,
                Look.PLAIN,
                product.retailerMargin().origin());
        Expr vat = sheet.value(
                row,
                7,
                Expr.input(product.vat()),
                NumberFormat.PERCENT,
                Look.PLAIN,
                product.vat().origin());
        Expr wholesale = null;
        PriceLadder.Downwards downwards = ladder.downwards();
        if (downwards != null) {
            wholesale = downwards(row, product, downwards, cost, retailer, vat);
        }
        PriceLadder.Upwards upwards = ladder.upwards();
        if (upwards != null) {
            wholesale = upwards(row, product, upwards, cost, retailer, vat);
        }
        breakEven(row, run, product, ladder, Objects.requireNonNull(wholesale), cost);
    }

    private Expr upwards(int row, Product product, PriceLadder.Upwards ladder, Expr cost, Expr retailer, Expr vat) {
        Figure target = Objects.requireNonNull(product.targetMargin());
        Expr margin = sheet.value(row, 3, Expr.input(target), NumberFormat.PERCENT, Look.PLAIN, target.origin());
        Expr one = Expr.of(1);
        Expr wholesale = sheet.checked(row, 4, cost.over(one.minus(margin)), ladder.wholesale(), money, Look.PLAIN);
        Expr exVat =
                sheet.checked(row, 6, wholesale.over(one.minus(retailer)), ladder.retailExVat(), money, Look.PLAIN);
        sheet.checked(row, 8, exVat.times(one.plus(vat)), ladder.retail(), money, Look.KEY);
        return wholesale;
    }

    private Expr downwards(int row, Product product, PriceLadder.Downwards ladder, Expr cost, Expr retailer, Expr vat) {
        Figure target = Objects.requireNonNull(product.targetRetailPrice());
        Expr retail = sheet.value(row, 9, Expr.input(target), money, Look.PLAIN, target.origin());
        Expr one = Expr.of(1);
        Expr exVat = sheet.checked(row, 10, retail.over(one.plus(vat)), ladder.retailExVat(), money, Look.PLAIN);
        Expr wholesale =
                sheet.checked(row, 11, exVat.times(one.minus(retailer)), ladder.wholesale(), money, Look.PLAIN);
        if (ladder.margin() != null) {
            sheet.checked(
                    row, 12, wholesale.minus(cost).over(wholesale), ladder.margin(), NumberFormat.PERCENT, Look.KEY);
        }
        return wholesale;
    }

    private void breakEven(int row, RunCells run, Product product, PriceLadder ladder, Expr wholesale, Expr cost) {
        if (ladder.breakEvenUnits() == null) {
            sheet.text(row, 13, "never", Look.WARNING);
            return;
        }
        Expr earned = wholesale.minus(cost.minus(Objects.requireNonNull(run.oneOffPerUnit())));
        sheet.checked(
                row,
                13,
                Inputs.orZero(product.oneOffCosts()).over(earned),
                ladder.breakEvenUnits(),
                NumberFormat.WHOLE,
                Look.PLAIN);
    }
}
