package perkilo.report.cost;

import static java.math.BigDecimal.ZERO;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import perkilo.costing.Item;
import perkilo.costing.ItemCost;
import perkilo.costing.RunCost;
import perkilo.model.Material;
import perkilo.model.Product;
import perkilo.origin.Figure;
import perkilo.purchasing.LineCost;
import perkilo.report.part.MakingPart;
import perkilo.report.part.NeedFormulas;
import perkilo.report.part.Rows;
import perkilo.report.part.Shortage;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.SheetNames;

/**
 * The part of a run's block that says what each item costs: what is used, what is left, what is wasted.
 *
 * @param rawMaterials goods of materials used
 * @param packaging goods of components used
 * @param materialsUsed materials used, landed
 * @param used everything used, landed
 * @param wasted what will expire, landed
 * @param outlay everything paid for
 * @param rawMaterialPerKg cost of the recipe for one kilogram
 * @param lowestLeft the least that is left over of any item: below zero where not enough is bought
 */
record ItemsPart(
        Expr rawMaterials,
        Expr packaging,
        Expr materialsUsed,
        Expr used,
        Expr wasted,
        Expr outlay,
        Expr rawMaterialPerKg,
        Expr lowestLeft) {

    static ItemsPart write(
            Rows rows, RunCost cost, MakingPart making, IdentityHashMap<LineCost, PurchasePart.LineCells> lines) {
        return new Writer(rows, cost, making, lines).write();
    }

    private static final class Writer {
        private static final int SHARE = 1;
        private static final int NEEDED = 2;
        private static final int UNIT = 3;
        private static final int ORDERED = 4;
        private static final int LEFT = 5;
        private static final int USABLE = 6;
        private static final int PER_UNIT = 7;
        private static final int USED = 8;
        private static final int GOODS = 9;
        private static final int WASTED = 10;
        private static final int PAID = 11;
        private static final int STOCK = 12;
        private static final int SHORT = 13;

        private final Rows rows;
        private final SheetBuilder sheet;
        private final RunCost cost;
        private final MakingPart making;
        private final IdentityHashMap<LineCost, PurchasePart.LineCells> lines;
        private final NumberFormat money;
        private final NumberFormat fine;
        private final List<Expr> recipe = new ArrayList<>();

        Writer(Rows rows, RunCost cost, MakingPart making, IdentityHashMap<LineCost, PurchasePart.LineCells> lines) {
            this.rows = rows;
            this.sheet = rows.sheet();
            this.cost = cost;
            this.making = making;
            this.lines = lines;
            this.money = NumberFormat.money(cost.home().getCurrencyCode(), 2);
            this.fine = NumberFormat.money(cost.home().getCurrencyCode(), 4);
        }

        ItemsPart write() {
            rows.section("Materials and components", Look.SECTION);
            rows.heads(
                    "Item",
                    "Share of the bulk",
                    "Needed",
                    "Unit",
                    "Bought",
                    "Left over",
                    "Usable in time",
                    "Landed cost per unit",
                    "Used",
                    "of it goods",
                    "Wasted",
                    "Paid",
                    "Stock left");
            int first = rows.next();
            int materials = 0;
            for (ItemCost item : cost.items()) {
                writeItem(item, rows.next());
                rows.skip(1);
                materials += item.item().isMaterial() ? 1 : 0;
            }
            return totals(first, first + materials - 1, rows.next() - 1);
        }

        private void writeItem(ItemCost item, int row) {
            Item what = item.item();
            sheet.text(row, 0, what.name(), Look.LABEL, what.origin());
            sheet.text(row, UNIT, what.unit(), Look.PLAIN);
            Material material = what.material();
            Expr needed = material == null ? pieces(what, row) : kilograms(what, material, row);
            if (item.housePrice() != null) {
                Expr price = sheet.value(
                        row,
                        PER_UNIT,
                        Expr.input(item.housePrice()),
                        fine,
                        Look.PLAIN,
                        item.housePrice().origin());
                writeMoney(item, row, price, needed.times(price), needed.times(price), Expr.of(0), Expr.of(0));
                addToRecipe(what, row, price);
                return;
            }
            Expr ordered = sheet.checked(
                    row,
                    ORDERED,
                    sum(item, PurchasePart.LineCells::quantity),
                    item.ordered(),
                    NumberFormat.QUANTITY,
                    Look.PLAIN);
            Expr left =
                    sheet.checked(row, LEFT, ordered.minus(needed), item.leftover(), NumberFormat.QUANTITY, Look.PLAIN);
            sheet.sentence(row, SHORT, Look.HINT, Shortage.words(left, "", "bought for this: run perkilo cost again"));
            Expr usable = sheet.checked(
                    row, USABLE, usable(what, needed, left), item.usableLeftover(), NumberFormat.QUANTITY, Look.PLAIN);
            Expr landed = sum(item, PurchasePart.LineCells::landed);
            boolean none = ordered.value().signum() == 0;
            Expr perUnit = sheet.checked(
                    row, PER_UNIT, none ? Expr.of(0) : landed.over(ordered), item.landedPerUnit(), fine, Look.PLAIN);
            Expr goods = sum(item, PurchasePart.LineCells::goods);
            Expr usedGoods = none ? Expr.of(0) : needed.times(goods.over(ordered));
            Expr wasted = left.minus(usable).times(perUnit);
            writeMoney(item, row, perUnit, usedGoods, landed, wasted, usable.times(perUnit));
            addToRecipe(what, row, perUnit);
        }

        /** Products, not differences of products: so what is nothing comes out as nothing. */
        private void writeMoney(
                ItemCost item, int row, Expr perUnit, Expr usedGoods, Expr paid, Expr wasted, Expr stock) {
            Expr needed = Expr.cell(
                    sheet.name(), SheetNames.cell(row, NEEDED), item.item().needed());
            sheet.checked(row, USED, needed.times(perUnit), item.used(), money, Look.PLAIN);
            sheet.checked(row, GOODS, usedGoods, item.usedGoods(), money, Look.PLAIN);
            sheet.checked(row, WASTED, wasted, item.wasted(), money, Look.PLAIN);
            sheet.checked(row, PAID, paid, item.landed(), money, Look.PLAIN);
            BigDecimal stockLeft = item.landed().subtract(item.used()).subtract(item.wasted());
            sheet.checked(row, STOCK, stock, stockLeft, money, Look.PLAIN);
        }

        private Expr kilograms(Item item, Material material, int row) {
            Expr share = sheet.checked(
                    row,
                    SHARE,
                    NeedFormulas.share(cost.needs().formula(), item),
                    item.share(),
                    NumberFormat.PERCENT,
                    Look.PLAIN);
            return sheet.checked(
                    row,
                    NEEDED,
                    NeedFormulas.kilograms(material, making.charged(), share),
                    item.needed(),
                    NumberFormat.QUANTITY,
                    Look.PLAIN);
        }

        private Expr pieces(Item item, int row) {
            Expr units = Objects.requireNonNull(making.units(), "a component belongs to units of a product");
            return sheet.checked(
                    row, NEEDED, NeedFormulas.pieces(item, units), item.needed(), NumberFormat.WHOLE, Look.PLAIN);
        }

        private Expr usable(Item item, Expr needed, Expr left) {
            Material material = item.material();
            Product product = cost.needs().product();
            Figure yearly = product == null ? null : product.yearlyUnits();
            Figure life = material == null ? null : material.shelfLifeMonths();
            Expr units = making.units();
            if (yearly == null || life == null || units == null) {
                return left;
            }
            Expr inTime = needed.times(Expr.input(yearly))
                    .over(units)
                    .times(Expr.input(life))
                    .over(Expr.of(12));
            return left.min(inTime.minus(needed).max(Expr.of(0)));
        }

        private void addToRecipe(Item item, int row, Expr perUnit) {
            if (item.isMaterial()) {
                recipe.add(Expr.cell(sheet.name(), SheetNames.cell(row, SHARE), item.share())
                        .times(perUnit));
            }
        }

        private Expr sum(ItemCost item, Function<PurchasePart.LineCells, Expr> which) {
            return Expr.sum(item.lines().stream()
                    .map(line -> which.apply(Objects.requireNonNull(lines.get(line))))
                    .toList());
        }

        private ItemsPart totals(int first, int lastMaterial, int last) {
            int row = rows.next();
            sheet.text(row, 0, "Total", Look.TOTAL);
            Expr used = total(row, USED, first, last, cost.used());
            sheet.value(row, GOODS, sheet.sumOfColumn(GOODS, first, last), money, Look.TOTAL);
            Expr wasted = total(row, WASTED, first, last, cost.wasted());
            Expr paid = total(row, PAID, first, last, cost.outlay());
            total(row, STOCK, first, last, cost.stockLeft());
            rows.skip(1);
            Shortage.markBelowZero(sheet, first, LEFT, last);
            Shortage.markWords(sheet, first, SHORT, last);
            Expr packaging = last > lastMaterial ? sheet.sumOfColumn(GOODS, lastMaterial + 1, last) : Expr.of(ZERO);
            return new ItemsPart(
                    sheet.sumOfColumn(GOODS, first, lastMaterial),
                    packaging,
                    sheet.sumOfColumn(USED, first, lastMaterial),
                    used,
                    wasted,
                    paid,
                    Expr.sum(recipe),
                    sheet.lowestOfColumn(LEFT, first, last));
        }

        private Expr total(int row, int column, int first, int last, BigDecimal engine) {
            return sheet.checked(row, column, sheet.sumOfColumn(column, first, last), engine, money, Look.TOTAL);
        }
    }
}
